import type { ScreenPoint } from "../picture/drag"
import { type Box, overlap } from "./labels"

export interface MomentArmPlace {
  /** From the grip's vertical to the plumb line, px. */
  readonly left: number
  readonly right: number
  readonly level: number
  /** Where its number begins, on the text's base line. */
  readonly text: ScreenPoint
  /** What its number and its line take on the page. */
  readonly boxes: readonly [number: Box, line: Box]
}

/** Tried in turn: how far under balance point and grip the line runs, px. */
const UNDER = [54, 82, 110, 138, 166]
/** Height of the number, px, and the width of a character of it on average. */
const TEXT = { height: 20, character: 10.5 }
const GAP = 10

/** The dimension from grip to plumb line, with its number where no knob hides it: to the right, else to the left. */
export function placeMomentArm(
  balance: ScreenPoint,
  grip: ScreenPoint,
  text: string,
  knobs: readonly Box[],
): MomentArmPlace {
  const [left, right] = [Math.min(balance.x, grip.x), Math.max(balance.x, grip.x)]
  const width = text.length * TEXT.character
  const at = (under: number, from: number): MomentArmPlace => {
    const level = Math.max(balance.y, grip.y) + under
    const number: Box = {
      left: from,
      right: from + width,
      top: level - TEXT.height / 2,
      bottom: level + TEXT.height / 2,
    }
    const line: Box = { left: left - 6, right: right + 6, top: level - 6, bottom: level + 6 }
    return { left, right, level, text: { x: number.left, y: level + 5 }, boxes: [number, line] }
  }
  const places = [right + GAP, left - GAP - width].flatMap((from) => UNDER.map((under) => at(under, from)))
  const free = ({ boxes: [number] }: MomentArmPlace) => number.left > 0 && !knobs.some((knob) => overlap(number, knob))
  return places.find(free) ?? places[0]!
}
