import { said, type UnitChoice } from "../describe/format"
import { elbowText, liftChange, nockText } from "../describe/liftText"
import { aheadWords, short } from "../describe/placeWords"
import { drawText } from "../describe/poseText"
import type { Evaluation } from "../scene/evaluate"
import { handle as words } from "../words/handle"
import type { Handle } from "./handle"

type Valued = Pick<Handle, "kind" | "field" | "value" | "place">

/** What a handle stands at: "720 mm", "5 discs", "−12°", "540 mm, 74 % drawn". */
export const valueText = (handle: Valued, units: UnitChoice): string => textOf(handle, handle.value, units)

function textOf({ kind, field, place }: Valued, value: number, units: UnitChoice): string {
  if (field.quantity === "count") return words.discs(value)
  if (kind !== "draw") return short(value, field.quantity, units)
  // The handle is on the nock, which is as far behind the grip as the bow is drawn.
  const drawn = short(-place(value)[0] * 1e3, "length", units, units.lengthUnit === "mm" ? 1 : 0)
  return `${drawn}, ${drawText(value)}`
}

/** What the bow does at a handle's value: "balance point 64 mm ahead", or for the line of pull "lift 2.34 N·m at full draw". */
export const effectText = ({ lifts }: Pick<Handle, "lifts">, { now, fullDraw }: Evaluation, units: UnitChoice) =>
  lifts ? words.lift(said(fullDraw.lift, "moment", units)) : words.balance(aheadWords(now.centre[0] * 1e3, units))

/** Value and effect: "720 mm; balance point 64 mm ahead". */
export const valueAndEffect = (handle: Valued & Pick<Handle, "lifts">, evaluation: Evaluation, units: UnitChoice) =>
  words.standing(valueText(handle, units), effectText(handle, evaluation, units))

/** Said once a change is done: "Front rod length 720 mm. Balance point 64 mm ahead." */
export function changeText(handle: Handle, evaluation: Evaluation, units: UnitChoice): string {
  const effect = effectText(handle, evaluation, units)
  return words.changed(handle.label, valueText(handle, units), effect.charAt(0).toUpperCase() + effect.slice(1))
}

/** What a tooltip shows of a handle; with paired arms it says that both move. */
export function tipText(handle: Valued & Pick<Handle, "twin">, paired: boolean, units: UnitChoice): string {
  const value = valueText(handle, units)
  return paired && handle.twin !== null ? words.bothArms(value) : value
}

/**
 * A tooltip's second line: what the draw asks of the fingers; what a handle of the line of pull does to the lift, or,
 * while it is moved, has done since `before`. Empty for the others: their effect is in the large figures.
 */
export function tipEffect(handle: Handle, evaluation: Evaluation, before: Evaluation | null, units: UnitChoice) {
  if (handle.kind === "draw") return words.fingers(said(evaluation.now.limbs.holdForce, "newtons", units))
  if (!handle.lifts) return ""
  if (before !== null && before !== evaluation)
    return liftChange(evaluation.fullDraw.lift - before.fullDraw.lift, units)
  return handle.kind === "angle" ? elbowText(evaluation, units) : nockText(evaluation, units)
}

/** Why a handle at this value goes no further: "No more than 2000 mm", "No less than 0 discs"; null inside the range. */
export function limitText(handle: Valued, value: number, units: UnitChoice): string | null {
  const { min, max } = handle.field
  // At brace and at full draw the value itself says so.
  if (handle.kind === "draw" || (value > min && value < max)) return null
  return (value >= max ? words.most : words.least)(textOf(handle, value, units))
}
