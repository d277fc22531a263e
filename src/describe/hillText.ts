import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import type { SceneError } from "../scene/errors"
import type { HangPlace, SlopeComparison } from "../scene/hills"
import type { MountName } from "../scene/schema"
import { hills } from "../words/hills"
import { partWords } from "../words/partWords"
import { csvText } from "./csv"
import { errorText } from "./errorText"
import { said, type UnitChoice } from "./format"
import { angleSize } from "./hillWords"
import { short } from "./placeWords"
import { slopeText } from "./poseText"

const { flattest } = hills

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
  const { hangs } = hills
  const held = heldWords(slopeDeg, cantDeg)
  const leaning = Math.atan2(stem[0], -stem[1]) / DEGREE
  const upright = Math.abs(leaning) < SAME_DEG
  const offPlumb = angleBetween(stem, gravity)
  const fromDown = angleBetween(stem, [0, -1, 0])
  const leans = upright ? hangs.straight : (leaning < 0 ? hangs.toArcher : hangs.toTarget)(angleSize(leaning))
  if (onStop) return hangs.onStop(held, name, angleSize(fromDown), angleSize(offPlumb))
  if (offPlumb >= SAME_DEG && joint === "hinge") return hangs.hinged(held, name, leans, angleSize(offPlumb))
  if (fromDown < SAME_DEG) return hangs.down(held, name)
  if (upright) return hangs.aside(held, name, angleSize(fromDown))
  return hangs.plumb(held, name, leans)
}

/** How the bow is held, at the beginning of a sentence: "Front raised 20°", "Level, top canted 11° left". */
function heldWords(slopeDeg: number, cantDeg: number): string {
  const { held } = hills
  const slope = Math.abs(slopeDeg) < SAME_DEG ? null : (slopeDeg > 0 ? held.raised : held.lowered)(angleSize(slopeDeg))
  const canted = Math.abs(cantDeg) < SAME_DEG ? null : (cantDeg > 0 ? held.right : held.left)(angleSize(cantDeg))
  if (slope === null) return canted === null ? held.level : held.onlyCanted(canted)
  return canted === null ? slope : held.both(slope, canted)
}

/** What the hillside in the picture says, in a sentence; on the level too. */
export function hillSentence(slopeDeg: number): string {
  const { noHill, hillRises, hillFalls } = hills.picture
  if (Math.abs(slopeDeg) < SAME_DEG) return noHill
  return (slopeDeg > 0 ? hillRises : hillFalls)(angleSize(slopeDeg))
}

function angleBetween(a: readonly [number, number, number], b: readonly [number, number, number]): number {
  const along = a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
  const across = Math.hypot(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
  return Math.atan2(across, along) / DEGREE
}

/** "15° up: net lift 0.21 N·m; locked 0.44 N·m, without it 0.10 N·m." */
export function slopePointText(
  { slopesDeg, free, locked, without, hasSwing }: SlopeComparison,
  index: number,
  units: UnitChoice,
  held?: SlopeComparison["free"],
): string {
  const { at, atWithHeld, swingAt, swingAtWithHeld } = hills.slopes
  const slope = capital(slopeText(slopesDeg[index]!))
  const of = (curve: SlopeComparison["free"]) => said(curve.netLift[index]!, "moment", units)
  if (!hasSwing) return held === undefined ? at(slope, of(free)) : atWithHeld(slope, of(free), of(held))
  const here = [slope, of(free), of(locked), of(without)] as const
  return held === undefined ? swingAt(...here) : swingAtWithHeld(...here, of(held))
}

/** Which of the three holds flattest, in a sentence. Only for a rig with a swing weight. */
export function flatnessSentence({ free, locked, without }: SlopeComparison, units: UnitChoice): string {
  const gain = locked.flatness - free.flatness
  const work = gain >= 0 ? hills.slopes.takes : hills.slopes.adds
  const sentence = without.flatness < free.flatness ? work.flatter : work.lessFlat
  return sentence(said(Math.abs(gain), "moment", units), said(without.flatness, "moment", units))
}

/** The slope plot as a table for a spreadsheet. */
export function slopeCsv(
  { slopesDeg, free, locked, without, hasSwing }: SlopeComparison,
  held?: SlopeComparison["free"],
): string {
  const { csv } = hills.slopes
  return csvText([
    { heading: csv.slope, values: slopesDeg },
    { heading: csv.net, values: free.netLift },
    ...(hasSwing
      ? [
          { heading: csv.locked, values: locked.netLift },
          { heading: csv.without, values: without.netLift },
        ]
      : []),
    ...(held === undefined ? [] : [{ heading: csv.held, values: held.netLift }]),
  ])
}

/** "Back mount", "End of the front chain", "Left arm", "Both arms". */
export function hangPlaceText({ path, ends }: HangPlace): string {
  const { mounts, mountTitles, sides, kinds, arm, armTitle } = partWords
  const [name, vbar, side] = path.split("/")
  const mount = name as MountName
  if (vbar === undefined || side === undefined) {
    return ends[0]?.address === null ? mountTitles[mount] : flattest.chainEnd(mounts[mount])
  }
  const number = vbar.split("#")[1]
  const where = [mount === "front" ? "" : mounts[mount], number === undefined ? "" : `${kinds.vbar} ${number}`] as const
  return capital(
    side === "both" ? flattest.bothArms(...where) : armTitle(arm(sides[side as keyof typeof sides], ...where)),
  )
}

/** "stem 120 mm, bob 150 g". */
export const hangSizeText = (swing: { stemLengthMm: number; bobMassG: number }, units: UnitChoice): string =>
  flattest.size(short(swing.stemLengthMm, "length", units), short(swing.bobMassG, "mass", units))

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** "spread 0.12 N·m; the whole bow 2510 g": what a hang comes to. */
export const hangAnswerText = ({ flatness, massG }: { flatness: number; massG: number }, units: UnitChoice): string =>
  flattest.effect(said(flatness, "moment", units), said(massG, "mass", units))

/** Numbers of the ranges, by the path of an error in one. */
const RANGES: Readonly<Record<string, string>> = {
  "stemLengthMm.from": flattest.ofStem.from,
  "stemLengthMm.to": flattest.ofStem.to,
  "stemLengthMm.step": flattest.ofStem.step,
  "bobMassG.from": flattest.ofBob.from,
  "bobMassG.to": flattest.ofBob.to,
  "bobMassG.step": flattest.ofBob.step,
}

/** Why a search could not begin, with the range named as the page names it. */
export function rangeProblemText(error: SceneError, units: UnitChoice): string {
  const which = RANGES[error.path] ?? error.path
  const why = errorText(error, units)
  return which === "" ? `${why}.` : flattest.wrong(which, why)
}
