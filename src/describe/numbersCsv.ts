import type { Evaluation } from "../scene/evaluate"
import { figuresOf } from "../scene/figures"
import type { Spreads } from "../scene/measure"
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
    const what = key.startsWith("inertia") ? `Turn resistance, ${label.toLowerCase()}` : label
    return value === null ? [] : [line(key, what, value, reportUnits[quantity as keyof typeof reportUnits])]
  })
  const parts = figures.parts.flatMap(({ path, massG, centreMm, noseDownNm }) => {
    const [title, key] = [partTitle(scene, path), `parts/${path}`]
    return [
      line(`${key}.massG`, `${title}: mass`, massG, "g"),
      line(`${key}.centreMm.forward`, `${title}: ahead of the grip`, centreMm[0], "mm"),
      line(`${key}.centreMm.up`, `${title}: above the grip`, centreMm[1], "mm"),
      line(`${key}.centreMm.side`, `${title}: to the right`, centreMm[2], "mm"),
      line(`${key}.noseDownNm`, `${title}: nose-down moment`, noseDownNm, "N·m"),
    ]
  })
  const lines = [
    line("pose.draw", "Held at: share of the draw", pose.draw, ""),
    line("pose.slopeDeg", "Held at: slope", pose.slopeDeg, "°"),
    line("pose.cantDeg", "Held at: cant", pose.cantDeg, "°"),
    ...live,
    ...parts,
  ]
  return csvText([
    { heading: "key", values: lines.map(({ key }) => key) },
    { heading: "what", values: lines.map(({ what }) => what) },
    { heading: "value", values: lines.map(({ value }) => value) },
    { heading: "unit", values: lines.map(({ unit }) => unit) },
    { heading: "plus or minus, 95 %", values: lines.map(({ spread }) => spread) },
  ])
}
