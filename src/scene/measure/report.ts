import type { Scene } from "../schema"
import { nextReadings } from "./next"
import type { MeasureResult, Miss } from "./result"

/** What `report --json` has under `measured`: file and report units, ± at 95 %, null for what is not determined. */
export interface MeasuredReport {
  readonly converged: boolean
  /** Whether the scene's riser is the fitted one. */
  readonly applied: boolean
  readonly riser: Scene["bow"]["riser"]
  readonly known: MeasureResult["known"]
  readonly within95: Readonly<Record<string, number | null>>
  readonly readings: readonly {
    readonly place: number
    readonly kind: string
    /** Whether the others agree once it is left out, where they do not with it; one of all suspects is wrong. */
    readonly suspect: boolean
    /** What everything but the riser weighs as entered, g, where a scale showed no more than that. */
    readonly outweighedByG?: number
    readonly misses: readonly Miss[]
  }[]
  /** Whether the readings disagree more than their errors allow. */
  readonly doubtful: boolean
  readonly chiSquared: number
  readonly freedom: number
  readonly condition: number
  readonly next: { readonly kind: string; readonly at: string | null; readonly balancePointMm: number } | null
}

export function measuredReport(scene: Scene, result: MeasureResult): MeasuredReport {
  const { fit, riser, known, spreads, readings, doubtful } = result
  const { converged, applied, chiSquared, freedom, condition } = fit
  const best = nextReadings(scene, fit)?.best[0]
  return {
    converged,
    applied,
    riser,
    known,
    within95: Object.fromEntries(
      Object.entries(spreads).map(([key, spread]) => [key, Number.isFinite(spread) ? spread : null]),
    ),
    readings: readings.map(({ place, reading, misses, suspect, outweighedByG }) => ({
      place,
      kind: reading.kind,
      suspect,
      ...(outweighedByG === null ? {} : { outweighedByG }),
      misses,
    })),
    doubtful,
    chiSquared,
    freedom,
    condition,
    next: best === undefined ? null : { kind: best.kind, at: best.point?.key ?? null, balancePointMm: best.spreadMm },
  }
}
