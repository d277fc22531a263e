import { unknowns } from "../core/measure"
import { type MeasureResult, nextReadings } from "../scene/measure"
import type { Scene } from "../scene/schema"
import {
  fitWords,
  kindTitles,
  knownWords,
  missText,
  nowWords,
  onWords,
  pointTitle,
  readingText,
  suspectMark,
  unknownWords,
} from "./measureText"
import { DECIMALS, fixed, pairs } from "./reportTable"

/** The report is in file units whatever anybody prefers. */
const FILE_UNITS = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const

/** What was read off the real bow and what it says of the riser; nothing where nothing was read. */
export function measuredSection(scene: Scene, result: MeasureResult | null): string[] {
  if (result === null) return []
  const { fit, riser, known, evaluation, spreads, readings } = result
  const numbers = [riser.massG, ...riser.centreMm, ...riser.gyrationMm]
  const plusMinus = (key: string, decimals: number, unit: string) => {
    const spread = spreads[key] ?? Number.POSITIVE_INFINITY
    return Number.isFinite(spread) ? `± ${fixed(spread, decimals)} ${unit}` : "not determined"
  }
  const [x, y, z] = evaluation.now.centre.map((value) => value * 1e3) as [number, number, number]
  const { xx, yy, zz } = evaluation.now.aboutOrigin
  const row = (label: string, value: number, key: string, decimals: number, unit: string): [string, string] => [
    label,
    `${fixed(value, decimals)} ${unit}, ${plusMinus(key, decimals, unit)}`,
  ]
  const suspects = readings.filter(({ suspect }) => suspect).length
  const excluded = (scene.measurements ?? []).length - readings.length
  return [
    `Measured: ${readings.length} readings${excluded > 0 ? `, ${excluded} left out` : ""}`,
    ...readings.flatMap(({ place, reading, misses, suspect }) => [
      `  ${place + 1}. ${kindTitles[reading.kind]}, ${onWords[reading.on]}: ${readingText(reading, FILE_UNITS)}${suspect ? ` (${suspectMark(suspects).toLowerCase()})` : ""}`,
      ...misses.map((miss) => `       ${missText(miss, FILE_UNITS)}`),
    ]),
    ...fitWords(result, FILE_UNITS).map((words) => `  ${words}`),
    ...(fit.converged
      ? [
          ...pairs(
            unknowns.map((name, k) => [
              unknownWords[name],
              `${fixed(numbers[k]!, DECIMALS.mm)} ${name === "mass" ? "g" : "mm"}, ${knownWords[known[name]]}`,
            ]),
          ),
          "  With that riser, as held; ± holds 95 times in 100 if the readings are as sure as they say:",
          ...pairs([
            row("mass", evaluation.now.mass * 1e3, "massG", DECIMALS.gram, "g"),
            row("balance point forward", x, "centreMm.forward", DECIMALS.mm, "mm"),
            row("balance point up", y, "centreMm.up", DECIMALS.mm, "mm"),
            row("balance point to the right", z, "centreMm.side", DECIMALS.mm, "mm"),
            row("turn resistance, pitch", zz, "inertiaGrip.pitch", DECIMALS.inertia, "kg·m²"),
            row("turn resistance, yaw", yy, "inertiaGrip.yaw", DECIMALS.inertia, "kg·m²"),
            row("turn resistance, roll", xx, "inertiaGrip.roll", DECIMALS.inertia, "kg·m²"),
          ]),
          fit.applied
            ? "  The scene has this riser."
            : "  The scene has another riser: the numbers above this section do not use these readings yet.",
          ...nextLines(scene, result),
        ]
      : []),
  ]
}

function nextLines(scene: Scene, { fit }: MeasureResult): string[] {
  const next = nextReadings(scene, fit)
  const best = next?.best[0]
  if (next === null || best === undefined) return []
  const what = best.point === null ? "weigh the bow" : `hang the bow from: ${pointTitle(scene, best.point)}`
  return [`  ${nowWords(next, true, FILE_UNITS)}`, `  Next, ${what}. That would make it ${fixed(best.spreadMm, 1)} mm.`]
}
