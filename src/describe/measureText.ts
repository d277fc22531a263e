import type { Known, Unknown } from "../core/measure"
import type { MeasureResult, Miss, NamedPoint, NextReadings, ReadingResult } from "../scene/measure"
import type { Measurement, Scene } from "../scene/schema"
import { said, type Shown, show, type UnitChoice } from "./format"
import { partTitle } from "./partNames"
import { aboveWords, aheadWords, sideWords } from "./placeWords"

/** What each kind of reading is called, by itself. */
export const kindTitles: Readonly<Record<Measurement["kind"], string>> = {
  scale: "Weighed",
  hang: "Hung",
  swing: "Swung",
  twist: "Twisted",
}

/** What was on the hook, in the middle of a sentence. */
export const onWords: Readonly<Record<Measurement["on"], string>> = {
  riser: "riser alone",
  bow: "bow without its rig",
  rigged: "bow with its rig",
}

export const axisWords: Readonly<Record<"pitch" | "yaw" | "roll", string>> = {
  pitch: "pitch, front up and down",
  yaw: "yaw, front left and right",
  roll: "roll, canting",
}

/** What is looked for, in the order of the fit. */
export const unknownWords: Readonly<Record<Unknown, string>> = {
  mass: "riser mass",
  forward: "riser centre, forward",
  up: "riser centre, up",
  side: "riser centre, to the right",
  roll: "riser radius of gyration, roll",
  yaw: "riser radius of gyration, yaw",
  pitch: "riser radius of gyration, pitch",
}

export const knownWords: Readonly<Record<Known, string>> = {
  yes: "measured",
  partly: "only together with others; kept near what was assumed",
  no: "not measured; kept as assumed",
}

/** "± 1.2", "± ?" where nothing determines it: how far a number may be off, in the unit that stands beside the number. */
export function spreadText(spread: number | undefined, quantity: Shown, units: UnitChoice): string {
  if (spread === undefined) return ""
  return `±\u00a0${Number.isFinite(spread) ? show(spread, quantity, units).text : "?"}`
}

/** "Hung at the string, nock: front 12.0° up, canted 1.0° left": one reading in a line. */
export function readingText(reading: Measurement, units: UnitChoice): string {
  switch (reading.kind) {
    case "scale":
      return said(reading.massG, "mass", units)
    case "hang": {
      const { slopeDeg, cantDeg } = reading
      const slope = slopeDeg === 0 ? "level" : `front ${said(Math.abs(slopeDeg), "angle", units)} ${updown(slopeDeg)}`
      return cantDeg === undefined ? `${slope}, cant not read` : `${slope}, ${cantText(cantDeg, units)}`
    }
    case "swing":
    case "twist":
      return `${reading.count} swings in ${said(reading.seconds, "duration", units)}, ${reading.axis}`
  }
}

const updown = (value: number): string => (value > 0 ? "up" : "down")
const cantText = (degrees: number, units: UnitChoice): string =>
  degrees === 0 ? "upright" : `canted ${said(Math.abs(degrees), "angle", units)} ${degrees > 0 ? "right" : "left"}`

/** "13 mm ahead, 70 mm below, in the middle": a place for the words of a reading. */
export const placeText = ([x, y, z]: readonly [number, number, number], units: UnitChoice): string =>
  [aheadWords(x, units), aboveWords(y, units), sideWords(z, units)].join(", ")

/** What a named place of the bow is called. */
export function pointTitle(scene: Scene, { what, path }: NamedPoint): string {
  switch (what) {
    case "grip":
      return "Grip, pivot point"
    case "nock":
      return "String, at the nock"
    case "string-top":
      return "String, upper end"
    case "string-bottom":
      return "String, lower end"
    case "mount":
    case "accessory":
      return partTitle(scene, path)
    case "end":
      return `${partTitle(scene, path)}, outer end`
  }
}

const missWords: Readonly<Record<Miss["what"], readonly [string, Shown]>> = {
  mass: ["mass", "mass"],
  slope: ["slope", "angle"],
  tilt: ["sideways tilt", "angle"],
  ahead: ["plumb line, forward", "length"],
  aside: ["plumb line, to the right", "length"],
  time: ["time", "duration"],
}

/** "slope: 0.3° more than the fit; 0.5° is usual; a mistake below 1.9° may not show": how far a reading is from the fit. */
export function missText({ what, by, error, studentised, unseen }: Miss, units: UnitChoice): string {
  const [words, quantity] = missWords[what]
  if (studentised === null || unseen === null) return `${words}: no other reading checks it`
  const told = (size: number) => said(size, quantity, units)
  const size = told(Math.abs(by))
  const off = Number.parseFloat(size) === 0 ? "as the fit has it" : `${size} ${by < 0 ? "less" : "more"} than the fit`
  return `${words}: ${off}; ${told(error)} is usual; a mistake below ${told(unseen)} may not show`
}

/** What the fit as a whole has to say for itself, in sentences; worst first. */
export function fitWords({ fit, readings, doubtful }: MeasureResult, units: UnitChoice): string[] {
  const light = readings.flatMap((each) => outweighedWords(each, units) ?? [])
  if (light.length > 0) return light
  const suspects = readings.filter(({ suspect }) => suspect).map(({ place }) => place)
  const words: string[] = []
  if (!fit.converged) words.push("The readings contradict each other: no riser fits them.")
  if (suspects.length > 0) words.push(suspectWords(suspects))
  else if (!fit.converged) words.push("Check or leave out some.")
  else if (doubtful) words.push(DISAGREE)
  if (!fit.converged) return words
  if (fit.freedom === 0) words.push("There are just enough readings for what they say: no reading checks another.")
  else if (!doubtful) words.push(AGREE)
  if (fit.held)
    words.push(
      "Read by themselves, the radii of gyration would be those of no body; the nearest ones that exist are taken.",
    )
  return words
}

/** That a scale showed less than what is known to have been on it; null where it did not. */
function outweighedWords({ place, reading, outweighedByG }: ReadingResult, units: UnitChoice): string | null {
  if (outweighedByG === null || reading.kind !== "scale") return null
  const rest = reading.on === "rigged" ? "limbs, string, accessories and rig" : "limbs, string and accessories"
  return `Reading ${place + 1}, ${said(reading.massG, "mass", units)}, is not above the ${said(outweighedByG, "mass", units)} that ${rest} weigh as entered, so nothing is left for the riser. Check the reading, what was on the scale, and those. Until then neither the numbers below nor their ± hold.`
}

const AGREE =
  "The readings agree within their errors. Small mistakes pass unseen: each reading says below what size. Wrongly " +
  "entered limbs or rig may do so too."
const DISAGREE =
  "The readings disagree more than their errors allow, and no single one left out mends that: more than one is off, " +
  "they are less sure than they say, or limbs, string or rig are not as entered. The ± below are too small."

/** Which readings could be the wrong one; of several none is advised against alone, since the numbers cannot tell. */
function suspectWords(places: readonly number[]): string {
  const [first, ...more] = places.map((place) => `reading ${place + 1}`) as [string, ...string[]]
  const last = more.pop()
  if (last === undefined)
    return `R${first.slice(1)} is far off: without it the others agree. Take it again, or leave it out. Until then neither the numbers below nor their ± hold.`
  const all = `${[first, ...more].join(", ")} or ${last}`
  return `R${all.slice(1)}: one of them is far off; take ${more.length === 0 ? "both" : "all of them"} again. Without any one of them the others agree, so the readings cannot tell which; until then neither the numbers below nor their ± hold.`
}

/** What a reading in doubt has beside it, `suspects` being how many there are. */
export const suspectMark = (suspects: number): string =>
  suspects > 1 ? "May be far off: take it again" : "Far off: take it again, or leave it out"

/**
 * How well the balance point is placed as things stand. A span that leans on what is assumed of any riser is said to be
 * no knowledge. `read` is whether any reading counts.
 */
export function nowWords({ nowMm, determined }: NextReadings, read: boolean, units: UnitChoice): string {
  const within = `${said(nowMm, "length", units)}, forward, up and side together`
  if (determined) return `The balance point of the bow as it is rigged is known to ${within}.`
  const open = read
    ? "The readings alone do not determine the balance point of the bow as it is rigged."
    : "Nothing measured says yet where the balance point of the bow as it is rigged lies."
  return `${open} It is assumed to be within ${within}, as risers usually are.`
}
