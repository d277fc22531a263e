import { partCard } from "../describe/partCard"
import type { PictureFrame } from "./picture"

/** The card of the part that is pointed at or, else, selected. */
export interface Card {
  update(frame: PictureFrame): void
}

export function createCard(host: HTMLElement): Card {
  const element = host.appendChild(document.createElement("div"))
  element.className = "view3d-card"
  element.hidden = true
  const [title, mass, moment, share] = ["strong", "div", "div", "div"].map((tag) =>
    element.appendChild(document.createElement(tag)),
  )
  const write = (into: HTMLElement | undefined, text: string) => {
    if (into !== undefined && into.textContent !== text) into.textContent = text
  }
  return {
    update(next) {
      const { hovered, selected, preferences } = next.state
      const path = [hovered, selected].find((candidate) => candidate !== null && next.parts.has(candidate)) ?? null
      const card = path === null ? null : partCard(next.evaluation, path, preferences)
      element.hidden = card === null
      if (card === null) return
      write(title, card.title)
      write(mass, card.mass)
      write(moment, card.moment)
      write(share, card.share ?? "")
    },
  }
}
