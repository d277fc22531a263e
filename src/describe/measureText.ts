import type { Known, Unknown } from "../core/measure"
import type { MeasureResult, Miss, NamedPoint, NextReadings, ReadingResult } from "../scene/measure"
import type { Measurement, Scene } from "../scene/schema"
import { plainDigits } from "../words/numbers"
import { readings } from "../words/readings"
import { said, type Shown, show, type UnitChoice } from "./format"
import { partTitle } from "./partNames"
import { aboveWords, aheadWords, sideWords } from "./placeWords"

/** What each kind of reading is called, by itself. */
export const kindTitles: Readonly<Record<Measurement["kind"], string>> = readings.kinds

/** What was on the hook, in the middle of a sentence. */
export const onWords: Readonly<Record<Measurement["on"], string>> = readings.on

export const axisWords: Readonly<Record<"pitch" | "yaw" | "roll", string>> = readings.axes

/** What is looked for. */
export const unknownWords: Readonly<Record<Unknown, string>> = readings.unknown

export const knownWords: Readonly<Record<Known, string>> = readings.known

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
    case "hang":
      return `${slopeText(reading.slopeDeg, units)}, ${cantText(reading.cantDeg, units)}`
    case "swing":
    case "twist":
      return readings.swings[reading.axis](reading.count, said(reading.seconds, "duration", units))
  }
}

function slopeText(degrees: number, units: UnitChoice): string {
  if (degrees === 0) return readings.level
  return (degrees > 0 ? readings.frontUp : readings.frontDown)(said(Math.abs(degrees), "angle", units))
}

function cantText(degrees: number | undefined, units: UnitChoice): string {
  if (degrees === undefined) return readings.cantNotRead
  if (degrees === 0) return readings.upright
  return (degrees > 0 ? readings.cantedRight : readings.cantedLeft)(said(Math.abs(degrees), "angle", units))
}

/** "13 mm ahead, 70 mm below, in the middle": a place for the words of a reading. */
export const placeText = ([x, y, z]: readonly [number, number, number], units: UnitChoice): string =>
  [aheadWords(x, units), aboveWords(y, units), sideWords(z, units)].join(", ")

/** What a named place of the bow is called. */
export function pointTitle(scene: Scene, { what, path }: NamedPoint): string {
  switch (what) {
    case "grip":
      return readings.points.grip
    case "nock":
      return readings.points.nock
    case "string-top":
      return readings.points.stringTop
    case "string-bottom":
      return readings.points.stringBottom
    case "mount":
    case "accessory":
      return partTitle(scene, path)
    case "end":
      return readings.points.end(partTitle(scene, path))
  }
}

const missQuantities: Readonly<Record<Miss["what"], Shown>> = {
  mass: "mass",
  slope: "angle",
  tilt: "angle",
  ahead: "length",
  aside: "length",
  time: "duration",
}

/** "slope: 0.3° more than the fit; 0.5° is usual; a mistake below 1.9° may not show": how far a reading is from the fit. */
export function missText({ what, by, error, studentised, unseen }: Miss, units: UnitChoice): string {
  const { miss } = readings
  if (studentised === null || unseen === null) return miss.unchecked(miss[what])
  const told = (size: number) => said(size, missQuantities[what], units)
  return miss.said(miss[what], offText(by, missQuantities[what], units), told(error), told(unseen))
}

function offText(by: number, quantity: Shown, units: UnitChoice): string {
  const { none, less, more } = readings.miss
  if (Number(plainDigits(show(Math.abs(by), quantity, units).text)) === 0) return none
  return (by < 0 ? less : more)(said(Math.abs(by), quantity, units))
}

/** What the fit as a whole has to say for itself, in sentences; worst first. */
export function fitWords({ fit, readings: read, doubtful }: MeasureResult, units: UnitChoice): string[] {
  const light = read.flatMap((each) => outweighedWords(each, units) ?? [])
  if (light.length > 0) return light
  const said = readings.fit
  const suspects = read.filter(({ suspect }) => suspect).map(({ place }) => place)
  const words: string[] = []
  if (!fit.converged) words.push(said.contradict)
  if (suspects.length > 0) words.push(suspectWords(suspects))
  else if (!fit.converged) words.push(said.leaveSomeOut)
  else if (doubtful) words.push(said.disagree)
  if (!fit.converged) return words
  if (fit.freedom === 0) words.push(said.justEnough)
  else if (!doubtful) words.push(said.agree)
  if (fit.held) words.push(said.held)
  return words
}

/** That a scale showed less than what is known to have been on it; null where it did not. */
function outweighedWords({ place, reading, outweighedByG }: ReadingResult, units: UnitChoice): string | null {
  if (outweighedByG === null || reading.kind !== "scale") return null
  const lighter = reading.on === "rigged" ? readings.fit.lighterRigged : readings.fit.lighter
  return lighter(place + 1, said(reading.massG, "mass", units), said(outweighedByG, "mass", units))
}

/** Which readings could be the wrong one; of several none is advised against alone, since the numbers cannot tell. */
function suspectWords(places: readonly number[]): string {
  const { reading, or, one, either, anyOf } = readings.suspects
  if (places.length === 1) return one(places[0]! + 1)
  const names = places.map((place) => reading(`${place + 1}`))
  const all = or(names.slice(0, -1).join(", "), names.at(-1)!)
  return (places.length === 2 ? either : anyOf)(`${all.charAt(0).toUpperCase()}${all.slice(1)}`)
}

/** What a reading in doubt has beside it, `suspects` being how many there are. */
export const suspectMark = (suspects: number): string =>
  suspects > 1 ? readings.suspects.markOfSeveral : readings.suspects.mark

/**
 * How well the balance point is placed as things stand. A span that leans on what is assumed of any riser is said to be
 * no knowledge. `read` is whether any reading counts.
 */
export function nowWords({ nowMm, determined }: NextReadings, read: boolean, units: UnitChoice): string {
  const { determined: known, undetermined, unread } = readings.now
  return (determined ? known : read ? undetermined : unread)(said(nowMm, "length", units))
}
