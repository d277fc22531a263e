import { evaluate } from "../scene/evaluate"
import { type Figures, figuresOf } from "../scene/figures"
import type { Scene, Tried } from "../scene/schema"
import { csvText } from "./csv"
import { said, show, type UnitChoice } from "./format"
import { type ReadoutKey, readouts } from "./readouts"
import { reportUnits } from "./reportUnits"

/** What two setups are compared by, in the order of the table and the file. */
const compared: readonly ReadoutKey[] = [
  "centreMm.forward",
  "centreMm.up",
  "centreMm.side",
  "massG",
  "fullDraw.netLiftNm",
  "inertiaGrip.pitch",
  "inertiaGrip.yaw",
  "inertiaGrip.roll",
]

const compareWords = (key: ReadoutKey): string =>
  key.startsWith("inertia") ? `Turn resistance, ${readouts[key].label.toLowerCase()}` : readouts[key].label

/** "27, 25; 28" as numbers; null where something in it is none. Nothing typed is no scores. */
export function readScores(text: string): number[] | null {
  const words = text.split(/[\s,;]+/).filter((word) => word !== "")
  const numbers = words.map(Number)
  return numbers.every((number) => Number.isFinite(number) && number >= 0) ? numbers : null
}

export const scoresText = (scores: readonly number[]): string => scores.join(", ")

const sum = (scores: readonly number[]): number => scores.reduce((total, score) => total + score, 0)

/** "Setup 3: long bar (2026-05-17)": an entry of the log in lists. */
export function triedTitle({ name, date }: Pick<Tried, "name" | "date">, place: number): string {
  const title = name === "" ? `Setup ${place + 1}` : `Setup ${place + 1}: ${name}`
  return date === "" ? title : `${title} (${date})`
}

/** "felt 4 of 5: slow · scores 27, 25, total 52 · group 130 mm": what was noted of one. */
export function impressionText(tried: Tried, units: UnitChoice): string {
  const { feel, rating, scores, groupMm } = tried
  const felt = [rating === undefined ? "" : `felt ${rating} of 5`, feel].filter((word) => word !== "").join(": ")
  const total = scores.length > 1 ? `, total ${sum(scores)}` : ""
  const shot = scores.length === 0 ? "" : `scores ${scoresText(scores)}${total}`
  const group = groupMm === undefined ? "" : `group ${said(groupMm, "length", units)}`
  return [felt, shot, group].filter((word) => word !== "").join(" · ")
}

/** A setup's numbers on the bow as it is now, held as the scene is; null where the bow cannot be strung. */
export function triedFigures(scene: Scene, rig: Scene["rig"]): Figures | null {
  const evaluated = evaluate({ ...scene, rig })
  return evaluated.ok ? figuresOf(evaluated.value) : null
}

export interface ComparedRow {
  readonly key: ReadoutKey
  /** With the unit that all three numbers are in. */
  readonly label: string
  readonly first: string
  readonly second: string
  /** Second less first, with its sign. */
  readonly change: string
}

/** Two setups side by side, number by number, in the chosen units. */
export function comparedRows(first: Figures, second: Figures, units: UnitChoice): ComparedRow[] {
  return compared.map((key) => {
    const { of, quantity } = readouts[key]
    const [a, b] = [of(first) ?? Number.NaN, of(second) ?? Number.NaN]
    const { text: change, unit } = show(b - a, quantity, units)
    return {
      key,
      label: `${compareWords(key)}, ${unit}`,
      first: show(a, quantity, units).text,
      second: show(b, quantity, units).text,
      change: b > a && Number(change) !== 0 ? `+${change}` : change,
    }
  })
}

/** Past 12 significant digits there is only the noise of float64 sums: 2625, not 2624.9999999999995. */
const noiseless = (value: number | null): number | null => (value === null ? null : Number(value.toPrecision(12)))

/** The whole log as a file for a spreadsheet: what was noted, and the numbers of each setup on the bow as it is now. */
export function logCsv(scene: Scene): string {
  const log = scene.log ?? []
  const all = log.map(({ rig }) => triedFigures(scene, rig))
  return csvText([
    { heading: "setup", values: log.map((_, place) => place + 1) },
    { heading: "date", values: log.map(({ date }) => date) },
    { heading: "name", values: log.map(({ name }) => name) },
    { heading: "felt, 1 to 5", values: log.map(({ rating }) => rating ?? null) },
    { heading: "feel", values: log.map(({ feel }) => feel) },
    { heading: "scores", values: log.map(({ scores }) => scoresText(scores)) },
    { heading: "total", values: log.map(({ scores }) => (scores.length === 0 ? null : sum(scores))) },
    { heading: "group mm", values: log.map(({ groupMm }) => groupMm ?? null) },
    ...compared.map((key) => ({
      heading: `${compareWords(key)}, ${reportUnits[readouts[key].quantity as keyof typeof reportUnits]}`,
      values: all.map((figures) => (figures === null ? null : noiseless(readouts[key].of(figures)))),
    })),
    { heading: "note", values: log.map(({ note }) => note) },
  ])
}
