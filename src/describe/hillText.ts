import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import type { SceneError } from "../scene/errors"
import type { HangPlace, SlopeComparison } from "../scene/hills"
import { localNumber } from "../words/numbers"
import { csvText } from "./csv"
import { errorText } from "./errorText"
import { said, type UnitChoice } from "./format"
import { short } from "./placeWords"
import { slopeText } from "./poseText"

/** How a swing weight rests on the bow as it is held; directions are unit vectors in bow axes. */
export interface Hanging {
  /** "Back swing weight". */
  readonly name: string
  readonly joint: "hinge" | "ball"
  readonly stem: readonly [number, number, number]
  readonly gravity: readonly [number, number, number]
  readonly onStop: boolean
  readonly slopeDeg: number
  readonly cantDeg: number
}

/** Angles below this, degrees, are shown as none. */
const SAME_DEG = 0.05

/**
 * What the picture shows of a hanging weight: "Front raised 20°: the back swing weight hangs 20.0° toward the archer in
 * the bow's own frame, though plumb in the world."
 */
export function hangSentence({ name, joint, stem, gravity, onStop, slopeDeg, cantDeg }: Hanging): string {
  const leaning = Math.atan2(stem[0], -stem[1]) / DEGREE
  const offPlumb = angleBetween(stem, gravity)
  const fromDown = angleBetween(stem, [0, -1, 0])
  const subject = `the ${name.charAt(0).toLowerCase()}${name.slice(1)}`
  const lead = leadWords(slopeDeg, cantDeg)
  const way = leaning < 0 ? "toward the archer" : "toward the target"
  const leans = Math.abs(leaning) < SAME_DEG ? "straight down" : `${degrees(Math.abs(leaning))} ${way}`
  if (onStop) {
    return `${lead}: ${subject} leans on its stop, ${degrees(fromDown)} from the bow's own down and ${degrees(offPlumb)} short of plumb.`
  }
  if (offPlumb >= SAME_DEG && joint === "hinge") {
    return `${lead}: ${subject} hangs ${leans} in the bow's own frame; its hinge turns in the bow's plane only, so the cant leaves it ${degrees(offPlumb)} from plumb.`
  }
  if (fromDown < SAME_DEG) return `${lead}: ${subject} hangs straight down, in the bow's own frame and in the world.`
  if (Math.abs(leaning) < SAME_DEG) {
    return `${lead}: ${subject} hangs ${degrees(fromDown)} to the side in the bow's own frame, though plumb in the world.`
  }
  return `${lead}: ${subject} hangs ${leans} in the bow's own frame, though plumb in the world.`
}

export const NO_SWING = "This rig has no swing weight. Add one on the Rig page, or let the search below hang one."

function leadWords(slopeDeg: number, cantDeg: number): string {
  const slope =
    Math.abs(slopeDeg) < SAME_DEG ? "" : `Front ${slopeDeg > 0 ? "raised" : "lowered"} ${degrees(Math.abs(slopeDeg))}`
  const cant =
    Math.abs(cantDeg) < SAME_DEG ? "" : `top canted ${degrees(Math.abs(cantDeg))} ${cantDeg > 0 ? "right" : "left"}`
  if (slope === "" && cant === "") return "Held level"
  if (slope === "") return `Level, ${cant}`
  return cant === "" ? slope : `${slope}, ${cant}`
}

const degrees = (value: number): string => `${localNumber(String(Number(value.toFixed(1))))}°`

function angleBetween(a: readonly [number, number, number], b: readonly [number, number, number]): number {
  const along = a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
  const across = Math.hypot(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
  return Math.atan2(across, along) / DEGREE
}

/** "15° up: net lift 0.21 N·m; locked 0.44 N·m, without it 0.10 N·m." */
export function slopePointText(
  slopes: SlopeComparison,
  index: number,
  units: UnitChoice,
  held?: SlopeComparison["free"],
): string {
  const at = (curve: { netLift: readonly number[] }) => said(curve.netLift[index]!, "moment", units)
  const words = `${capital(slopeText(slopes.slopesDeg[index]!))}: net lift ${at(slopes.free)}`
  const rest = slopes.hasSwing ? `; locked ${at(slopes.locked)}, without it ${at(slopes.without)}` : ""
  return `${words}${rest}${held === undefined ? "" : `; the held setup ${at(held)}`}.`
}

/** Which of the three holds flattest, in a sentence. Only for a rig with a swing weight. */
export function flatnessSentence({ free, locked, without }: SlopeComparison, units: UnitChoice): string {
  const gain = locked.flatness - free.flatness
  const size = said(Math.abs(gain), "moment", units)
  const first =
    gain >= 0
      ? `Hanging free, the weight takes ${size} off the spread of the locked one`
      : `Hanging free, the weight adds ${size} to the spread of the locked one`
  const better = without.flatness < free.flatness
  return `${first}; without it the bow would be ${better ? "flatter" : "less flat"}, with ${said(without.flatness, "moment", units)}.`
}

/** The slope plot as a table for a spreadsheet. */
export const slopeCsv = (
  { slopesDeg, free, locked, without, hasSwing }: SlopeComparison,
  held?: SlopeComparison["free"],
): string =>
  csvText([
    { heading: "slope deg", values: slopesDeg },
    { heading: "net lift N·m", values: free.netLift },
    ...(hasSwing
      ? [
          { heading: "net lift locked N·m", values: locked.netLift },
          { heading: "net lift without swing weight N·m", values: without.netLift },
        ]
      : []),
    ...(held === undefined ? [] : [{ heading: "net lift of the held setup N·m", values: held.netLift }]),
  ])

/** "Back mount", "End of the front chain", "Left arm", "Both arms". */
export function hangPlaceText({ path, ends }: HangPlace): string {
  const [mount = "", vbar, side] = path.split("/")
  if (vbar === undefined || side === undefined) {
    return ends[0]?.address === null ? `${capital(mount)} mount` : `End of the ${mount} chain`
  }
  const number = vbar.split("#")[1]
  const where = [mount === "front" ? "" : mount, number === undefined ? "" : `V-bar ${number}`]
  const words = [...where, side, side === "both" ? "arms" : "arm"].filter((word) => word !== "").join(" ")
  return capital(words)
}

/** "stem 120 mm, bob 150 g". */
export const hangSizeText = (swing: { stemLengthMm: number; bobMassG: number }, units: UnitChoice): string =>
  `stem ${short(swing.stemLengthMm, "length", units)}, bob ${short(swing.bobMassG, "mass", units)}`

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** "spread 0.12 N·m; the whole bow 2510 g": what a hang comes to. */
export const hangAnswerText = ({ flatness, massG }: { flatness: number; massG: number }, units: UnitChoice): string =>
  `spread ${said(flatness, "moment", units)}; the whole bow ${said(massG, "mass", units)}`

const RANGE_WORDS: Readonly<Record<string, string>> = {
  "stemLengthMm.from": "Stem, from: ",
  "stemLengthMm.to": "Stem, to: ",
  "stemLengthMm.step": "Stem, steps: ",
  "bobMassG.from": "Bob, from: ",
  "bobMassG.to": "Bob, to: ",
  "bobMassG.step": "Bob, steps: ",
}

/** Why a search could not begin, with the range named as the page names it. */
export const rangeProblemText = (error: SceneError, units: UnitChoice): string =>
  `${RANGE_WORDS[error.path] ?? (error.path === "" ? "" : `${error.path}: `)}${errorText(error, units)}.`
