import type { Evaluation } from "../scene/evaluate"
import { figuresOf } from "../scene/figures"
import type { Spreads } from "../scene/measure"
import { numbersTable as words } from "../words/numbersTable"
import { csvText } from "./csv"
import { partTitle } from "./partNames"
import { readouts } from "./readouts"
import { reportUnits } from "./reportUnits"

interface Line {
  readonly key: string
  readonly what: string
  readonly value: number
  readonly unit: string
  readonly spread: number | null
}

/** Every number of the setup as it is held, one a line under the report's keys and in its units, for a spreadsheet. */
export function numbersCsv(evaluation: Evaluation, spreads: Spreads | null): string {
  const { scene } = evaluation
  const figures = figuresOf(evaluation)
  const { pose } = evaluation.now
  const line = (key: string, what: string, value: number, unit: string): Line => ({
    key,
    what,
    value,
    unit,
    spread: spreads?.[key] ?? null,
  })
  const live = Object.entries(readouts).flatMap(([key, { label, quantity, of }]) => {
    const value = of(figures)
    const what = key.startsWith("inertia") ? words.turn(label.toLowerCase()) : label
    return value === null ? [] : [line(key, what, value, reportUnits[quantity as keyof typeof reportUnits])]
  })
  const parts = figures.parts.flatMap(({ path, massG, centreMm, noseDownNm }) => {
    const [title, key] = [partTitle(scene, path), `parts/${path}`]
    return [
      line(`${key}.massG`, words.mass(title), massG, "g"),
      line(`${key}.centreMm.forward`, words.forward(title), centreMm[0], "mm"),
      line(`${key}.centreMm.up`, words.up(title), centreMm[1], "mm"),
      line(`${key}.centreMm.side`, words.side(title), centreMm[2], "mm"),
      line(`${key}.noseDownNm`, words.noseDown(title), noseDownNm, "N·m"),
    ]
  })
  const lines = [
    line("pose.draw", words.draw, pose.draw, ""),
    line("pose.slopeDeg", words.slope, pose.slopeDeg, "°"),
    line("pose.cantDeg", words.cant, pose.cantDeg, "°"),
    ...live,
    ...parts,
  ]
  return csvText([
    { heading: words.key, values: lines.map(({ key }) => key) },
    { heading: words.what, values: lines.map(({ what }) => what) },
    { heading: words.value, values: lines.map(({ value }) => value) },
    { heading: words.unit, values: lines.map(({ unit }) => unit) },
    { heading: words.spread, values: lines.map(({ spread }) => spread) },
  ])
}
