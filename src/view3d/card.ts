import { multiply } from "../core/solids"
import { partCard } from "../describe/partCard"
import type { Projector } from "../picture/projector"
import type { PictureFrame } from "./picture"

/** The card beside the part that is pointed at or, else, selected. */
export interface Card {
  update(frame: PictureFrame): void
  place(projector: Projector, width: number, height: number): void
}

/** From the part's middle to the card, and from the card to the picture's edge, px. */
const OFF = 22
const EDGE = 8

export function createCard(host: HTMLElement): Card {
  const element = host.appendChild(document.createElement("div"))
  element.className = "view3d-card"
  element.hidden = true
  const [title, mass, moment, share] = ["strong", "div", "div", "div"].map((tag) =>
    element.appendChild(document.createElement(tag)),
  )
  let frame: PictureFrame | null = null
  let path: string | null = null
  const write = (into: HTMLElement | undefined, text: string) => {
    if (into !== undefined && into.textContent !== text) into.textContent = text
  }
  return {
    update(next) {
      frame = next
      const { hovered, selected, preferences } = next.state
      path = [hovered, selected].find((candidate) => candidate !== null && next.parts.has(candidate)) ?? null
      const card = path === null ? null : partCard(next.evaluation, path, preferences)
      element.hidden = card === null
      if (card === null) return
      write(title, card.title)
      write(mass, card.mass)
      write(moment, card.moment)
      write(share, card.share ?? "")
    },
    place(projector, width, height) {
      const part = path === null ? undefined : frame?.parts.get(path)
      if (frame === null || part === undefined) return
      const { x, y } = projector.project(multiply(frame.evaluation.now.rotation, part.centre))
      const [w, h] = [element.offsetWidth, element.offsetHeight]
      const left = x + OFF + w + EDGE <= width ? x + OFF : x - OFF - w
      const top = y - OFF - h >= EDGE ? y - OFF - h : y + OFF
      const inside = (value: number, size: number, whole: number) =>
        Math.max(EDGE, Math.min(whole - size - EDGE, value))
      element.style.transform = `translate(${Math.round(inside(left, w, width))}px, ${Math.round(inside(top, h, height))}px)`
    },
  }
}
