import { evaluate } from "../scene/evaluate"
import { type Figures, figuresOf } from "../scene/figures"
import { logFields } from "../scene/measure/fields"
import type { Scene, Tried } from "../scene/schema"
import { decimalMark, localNumber, plainDigits } from "../words/numbers"
import { triedSetups as words } from "../words/triedSetups"
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
  key.startsWith("inertia") ? words.compared.turn(readouts[key].label.toLowerCase()) : readouts[key].label

/**
 * "27, 25; 28" as numbers; null where something in it is none, or may be meant otherwise. Nothing typed is no scores.
 * Semicolons and spaces part scores, and so do commas, save inside a number where `mark` is the comma.
 *
 * @param mark the decimal mark of whoever types
 */
export function readScores(text: string, mark = decimalMark): number[] | null {
  if (eitherWay(text, mark) !== null) return null
  const numbers = text
    .split(mark === "," ? /[\s;]+|,(?=\s|;|$)/ : /[\s,;]+/)
    .filter((word) => word !== "")
    .map((word) => Number(mark === "," ? word.replace(",", ".") : word))
  return numbers.every((number) => Number.isFinite(number) && number >= 0) ? numbers : null
}

/** Why what was typed is no list of scores; null where it is. */
export function scoresProblem(text: string, mark = decimalMark): string | null {
  const either = eitherWay(text, mark)
  if (either !== null) return words.form.twoWays(either.typed, either.joined, `${either.first}; ${either.second}`)
  if (readScores(text, mark) !== null) return null
  return mark === "," ? words.form.partedBySpaces : words.form.partedByCommas
}

/**
 * "1,250" or "1 250": one score with its thousands apart, or two, nobody can tell. As one it must be a score there can
 * be, so "27,250" is two; and with more about the comma it only parts: "1, 250", "9,1,250".
 */
function eitherWay(text: string, mark: string) {
  const gap = mark === "," ? "[ \u00a0\u202f]" : "[, \u00a0\u202f]"
  const pairs = new RegExp(`(?<![\\d.,])([1-9]\\d{0,2})${gap}(\\d{3})(?!\\d|,\\d)`, "g")
  for (const [typed, first, second] of text.matchAll(pairs)) {
    const joined = `${first}${second}`
    if (Number(joined) <= logFields.score.max) return { typed, first: first!, second: second!, joined }
  }
  return null
}

/** Scores as they are typed: parted so that they are read as the same again. */
export const scoresText = (scores: readonly number[], mark = decimalMark): string =>
  scores.map((score) => String(score).replace(".", mark)).join(mark === "," ? "; " : ", ")

/** Without the noise of float64 sums. */
const sum = (scores: readonly number[]): number => noiseless(scores.reduce((total, score) => total + score, 0))

/** "Setup 3: long bar (2026-05-17)": an entry of the log in lists. */
export function triedTitle({ name, date }: Pick<Tried, "name" | "date">, place: number): string {
  const title = name === "" ? words.setup(place + 1) : words.named(place + 1, name)
  return date === "" ? title : words.dated(title, date)
}

/** "felt 4 of 5: slow · scores 27, 25, total 52 · group 130 mm": what was noted of one. */
export function impressionText(tried: Tried, units: UnitChoice): string {
  const { scores, groupMm } = tried
  const shot = scores.length > 1 ? words.scoredInAll(scoresText(scores), localNumber(String(sum(scores)))) : ""
  const once = scores.length === 1 ? words.scored(scoresText(scores)) : ""
  const group = groupMm === undefined ? "" : words.grouped(said(groupMm, "length", units))
  return [feltText(tried), shot, once, group].filter((word) => word !== "").join(" · ")
}

function feltText({ feel, rating }: Tried): string {
  if (rating === undefined) return feel
  return feel === "" ? words.felt(rating) : words.feltAs(rating, feel)
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
      label: words.compared.row(compareWords(key), unit),
      first: show(a, quantity, units).text,
      second: show(b, quantity, units).text,
      change: b > a && Number(plainDigits(change)) !== 0 ? `+${change}` : change,
    }
  })
}

/** Past 12 significant digits there is only the noise of float64 sums: 2625, not 2624.9999999999995. */
const noiseless = (value: number): number => Number(value.toPrecision(12))

/** The whole log as a file for a spreadsheet: what was noted, and the numbers of each setup on the bow as it is now. */
export function logCsv(scene: Scene): string {
  const log = scene.log ?? []
  const all = log.map(({ rig }) => triedFigures(scene, rig))
  const { table } = words
  return csvText([
    { heading: table.setup, values: log.map((_, place) => place + 1) },
    { heading: table.date, values: log.map(({ date }) => date) },
    { heading: table.name, values: log.map(({ name }) => name) },
    { heading: table.rating, values: log.map(({ rating }) => rating ?? null) },
    { heading: table.feel, values: log.map(({ feel }) => feel) },
    { heading: table.scores, values: log.map(({ scores }) => scoresText(scores, ".")) },
    { heading: table.total, values: log.map(({ scores }) => (scores.length === 0 ? null : sum(scores))) },
    { heading: table.group, values: log.map(({ groupMm }) => groupMm ?? null) },
    ...compared.map((key) => ({
      heading: words.compared.row(compareWords(key), reportUnits[readouts[key].quantity as keyof typeof reportUnits]),
      values: all.map((figures) => {
        const value = figures === null ? null : readouts[key].of(figures)
        return value === null ? null : noiseless(value)
      }),
    })),
    { heading: table.note, values: log.map(({ note }) => note) },
  ])
}
