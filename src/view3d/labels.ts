import type { Vec3 } from "../core/solids"
import type { Box, Projector } from "../picture/projector"

/** Where a label stands about its point. */
export type Side = "right" | "left" | "below" | "above"
const sides = ["right", "left", "below", "above"] as const

export interface LabelWish {
  readonly text: string
  /** World axes, m. */
  readonly at: Vec3
  /** Where it is put if there is room; else on another side. */
  readonly side: Side
  /** How it looks: plain words, or an arm, a turn or a way. */
  readonly look: "plain" | "arm" | "turn" | "way"
  /** The higher rank chooses its place first; a label that finds none is left out. */
  readonly rank: number
}

/** Words in the picture: page elements over it, moved with the camera. */
export interface Labels {
  /** Shows, changes or, with null, takes away the label called `name`. */
  put(name: string, wish: LabelWish | null): void
  /** Keeps labels off `radius` px around a point, world axes, m. */
  keepClear(name: string, at: Vec3, radius: number): void
  /** Whether one has come that has not been placed yet. */
  waiting(): boolean
  /** Moves all labels to where their points are now, off the boxes that are `taken`. */
  place(projector: Projector, width: number, height: number, taken: readonly Box[]): void
}

interface Label {
  readonly element: HTMLElement
  wish: LabelWish
  width: number
  height: number
  /** Its left and top as last written, px; null while it is hidden. */
  shown: { readonly left: number; readonly top: number } | null
}

/** Between a point and the label beside it, px. What must be read may stand further off where all near places are taken. */
const GAP = { near: 10, far: 44, farthest: 88 }

export function createLabels(host: HTMLElement): Labels {
  const labels = new Map<string, Label>()
  const clear = new Map<string, { readonly at: Vec3; readonly radius: number }>()
  let waiting = false
  return {
    waiting: () => waiting,
    keepClear: (name, at, radius) => void clear.set(name, { at, radius }),
    put(name, wish) {
      const known = labels.get(name)
      if (wish === null) {
        known?.element.remove()
        labels.delete(name)
        return
      }
      const label = known ?? newLabel(host, wish)
      waiting ||= known === undefined
      if (known === undefined || known.wish.text !== wish.text || known.wish.look !== wish.look) {
        label.element.className = `view3d-label view3d-${wish.look}`
        label.element.textContent = wish.text
        // All digits are of one width: measuring again, which lays the page out, is for other lengths only.
        if (known?.wish.text.length !== wish.text.length || known.wish.look !== wish.look) label.width = 0
      }
      label.wish = wish
      labels.set(name, label)
    },
    place(projector, width, height, occupied) {
      waiting = false
      const taken = [...occupied]
      for (const { at, radius } of clear.values()) {
        const { x, y } = projector.project(at)
        taken.push({ left: x - radius, top: y - radius, right: x + radius, bottom: y + radius })
      }
      // Sizes are read before anything is moved, so that the page is laid out once.
      for (const label of labels.values()) {
        if (label.width === 0) [label.width, label.height] = [label.element.offsetWidth, label.element.offsetHeight]
      }
      const ranked = [...labels.values()].sort((a, b) => b.wish.rank - a.wish.rank)
      for (const label of ranked) {
        const { x, y, visible } = projector.project(label.wish.at)
        const box = visible ? freePlace(x, y, label, taken, { left: 0, top: 0, right: width, bottom: height }) : null
        show(label, box)
        if (box !== null) taken.push(box)
      }
    },
  }
}

function newLabel(host: HTMLElement, wish: LabelWish): Label {
  const element = host.appendChild(document.createElement("div"))
  element.style.visibility = "hidden"
  return { element, wish, width: 0, height: 0, shown: null }
}

/** Writes where a label stands, only where that is another place: a style written again costs as much as a new one. */
function show(label: Label, box: Box | null): void {
  const { element, shown } = label
  if (box === null) {
    if (shown !== null) element.style.visibility = "hidden"
    label.shown = null
    return
  }
  const [left, top] = [Math.round(box.left), Math.round(box.top)]
  if (shown === null) element.style.visibility = "visible"
  else if (shown.left === left && shown.top === top) return
  element.style.transform = `translate(${left}px, ${top}px)`
  label.shown = { left, top }
}

/** The first free place beside the point (x, y) px, the wished side tried first; null where all are taken or outside. */
export function freePlace(
  x: number,
  y: number,
  { wish, width, height }: { wish: Pick<LabelWish, "side" | "look">; width: number; height: number },
  taken: readonly Box[],
  frame: Box,
): Box | null {
  for (const gap of wish.look === "plain" ? [GAP.near] : [GAP.near, GAP.far, GAP.farthest]) {
    for (const side of [wish.side, ...sides.filter((other) => other !== wish.side)]) {
      const box = beside(x, y, side, width, height, gap)
      const inside =
        box.left >= frame.left && box.right <= frame.right && box.top >= frame.top && box.bottom <= frame.bottom
      if (inside && !taken.some((other) => overlap(other, box))) return box
    }
  }
  return null
}

/** Box of a label of this size, `gap` px beside the point (x, y), px. */
function beside(x: number, y: number, side: Side, width: number, height: number, gap: number): Box {
  const left = side === "right" ? x + gap : side === "left" ? x - gap - width : x - width / 2
  const top = side === "below" ? y + gap : side === "above" ? y - gap - height : y - height / 2
  return { left, top, right: left + width, bottom: top + height }
}

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom
