import type { ScreenPoint } from "../picture/drag"

export interface LabelWish {
  readonly id: string
  readonly text: string
  /** What it is about, px. */
  readonly at: ScreenPoint
}

export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

export interface PlacedLabel extends LabelWish {
  /** Middle of the text's line, px. */
  readonly x: number
  readonly y: number
}

/** Size of the labels' text, px, and how wide a character of it is on average: for keeping them apart only. */
export const LABEL_SIZE = 12
const CHARACTER = 0.56 * LABEL_SIZE
/** About how wide a label is, px. */
export const labelWidth = (text: string): number => text.length * CHARACTER
const LINE = LABEL_SIZE + 4

/** Places to try around what a label is about, in label widths and px: above, below, then aside. */
const TRIES: readonly { readonly w: number; readonly dx: number; readonly dy: number }[] = [22, 38, 56, 78].flatMap(
  (gap) => [
    { w: 0, dx: 0, dy: -gap },
    { w: 0, dx: 0, dy: gap },
    { w: 0.5, dx: gap * 0.7, dy: -gap * 0.6 },
    { w: -0.5, dx: -gap * 0.7, dy: -gap * 0.6 },
    { w: 0.5, dx: gap * 0.7, dy: gap * 0.6 },
    { w: -0.5, dx: -gap * 0.7, dy: gap * 0.6 },
  ],
)

/**
 * Places labels so that none overlaps another or anything `taken`, and all are inside `room`. Earlier wishes choose
 * first; a label without a free place is left out.
 */
export function placeLabels(wishes: readonly LabelWish[], taken: readonly Box[], room: Box): PlacedLabel[] {
  const used: Box[] = [...taken]
  const placed: PlacedLabel[] = []
  for (const wish of wishes) {
    const width = labelWidth(wish.text)
    for (const { w, dx, dy } of TRIES) {
      const x = wish.at.x + dx + w * width
      const y = wish.at.y + dy
      const box = around({ x, y }, width, LINE)
      if (!within(box, room) || used.some((other) => overlap(box, other))) continue
      used.push(box)
      placed.push({ ...wish, x, y })
      break
    }
  }
  return placed
}

/** A box of this size about a point. */
export const around = ({ x, y }: ScreenPoint, width: number, height: number): Box => ({
  left: x - width / 2,
  right: x + width / 2,
  top: y - height / 2,
  bottom: y + height / 2,
})

/** The box a label takes. */
export const labelBox = ({ x, y, text }: PlacedLabel): Box => around({ x, y }, labelWidth(text), LINE)

export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

const within = (inner: Box, outer: Box): boolean =>
  inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
