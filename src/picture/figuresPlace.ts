import { page } from "../words/page"
import type { Box } from "./projector"

/** From this width of the picture on, px, the big figures stand in a column; the style sheet has the same. */
const COLUMN_FROM = 760
/** The page of a phone, which has the figures below the picture; the style sheet has the same. */
export const STACKED = "(max-width: 700px)"
const COLUMN = { width: 280, height: 372 }
const ROW_HEIGHT = 168

/** About how wide a character on a button is, and what all buttons together have around their words, px. */
const [CHARACTER, AROUND] = [8, 140]
/** The buttons to look from elsewhere, over the picture's lower left corner, px: as wide as their words make them. */
const BUTTONS = { width: AROUND + CHARACTER * Object.values(page.views).join("").length, height: 50 }

/** What the buttons cover of a picture this high, px: no words belong there. */
export const buttonsBox = (height: number): Box => ({
  left: 0,
  top: height - BUTTONS.height,
  right: BUTTONS.width,
  bottom: height,
})

export interface FiguresPlace {
  /** Room that a bow beside or under them must leave, px. */
  readonly right: number
  readonly top: number
  /** What they cover, px. */
  readonly box: Box | null
}

/**
 * Where the three big figures lie over a picture of this width, px: down the right of a wide one, in a row along the top
 * of a narrower one, nowhere where they are `elsewhere`.
 */
export function figuresPlace(width: number, elsewhere: boolean): FiguresPlace {
  if (elsewhere) return { right: 0, top: 0, box: null }
  if (width < COLUMN_FROM) {
    return { right: 0, top: ROW_HEIGHT, box: { left: 0, top: 0, right: width, bottom: ROW_HEIGHT } }
  }
  const left = width - COLUMN.width
  return { right: COLUMN.width, top: 0, box: { left, top: 0, right: width, bottom: COLUMN.height } }
}
