import { NEWTON_PER_LBF } from "../core/constants"
import type { Bow, Pose } from "../scene/schema"
import { DECIMALS, fixed } from "./reportTable"

const MM_PER_INCH = 25.4
/** AMO draw length is measured to a point this far in front of the grip pivot, in. */
const AMO_OFFSET = 1.75

/** `Recurve, 40 lbf at 665 mm draw (27.9 in AMO), right-handed.` */
export function bowWords(bow: Bow): string {
  const amo = fixed(bow.drawLengthMm / MM_PER_INCH + AMO_OFFSET, 1)
  const draw = `${bow.drawLengthMm} mm draw (${amo} in AMO)`
  const force =
    bow.kind === "compound"
      ? `Compound, ${bow.drawWeightLbf} lbf peak, ${bow.letOffPercent} % let-off, ${draw}`
      : `Recurve, ${bow.drawWeightLbf} lbf at ${draw}`
  return `${force}, ${bow.hand}-handed.`
}

/** `Held at brace, front raised 25°, canted 5° right.` */
export function poseWords(pose: Pose, draw: number): string {
  return `Held ${drawWords(pose.draw, draw)}, ${slopeWords(pose.slopeDeg)}, ${cantWords(pose.cantDeg)}.`
}

function drawWords(fraction: number, draw: number): string {
  if (fraction === 0) return "at brace"
  if (fraction === 1) return "at full draw"
  return `drawn to ${fixed(draw * 1e3, 1)} mm (${fixed(fraction * 100, 1)} % of the way)`
}

const slopeWords = (degrees: number): string =>
  degrees === 0 ? "level" : `front ${degrees > 0 ? "raised" : "lowered"} ${Math.abs(degrees)}°`

const cantWords = (degrees: number): string =>
  degrees === 0 ? "upright" : `canted ${Math.abs(degrees)}° ${degrees > 0 ? "right" : "left"}`

/** `45.8 mm forward`: a length with the word for its sign. */
export const placed = (mm: number, positive: string, negative: string): string =>
  `${fixed(Math.abs(mm), DECIMALS.mm)} mm ${mm < 0 ? negative : positive}`

/** A force in both units a coach reads. */
export const forceWords = (newton: number): string =>
  `${fixed(newton, DECIMALS.newton)} N (${fixed(newton / NEWTON_PER_LBF, DECIMALS.newton)} lbf)`
