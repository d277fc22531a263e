import { spreadOf, type Unknown, unknowns } from "../../core/measure"
import type { MeasuredFit } from "../../scene/measure"

/**
 * How far a number of the riser may be off at 95 %, in the file's unit. A radius of gyration is fitted by its square: the
 * larger of the two sides that the square's ± gives it.
 */
export function riserSpread(fit: MeasuredFit, name: Unknown): number {
  const place = unknowns.indexOf(name)
  const spread = spreadOf(
    fit,
    unknowns.map((_, k) => (k === place ? 1 : 0)),
  )
  if (place < 4) return spread * 1e3
  const square = fit.body.squares[place - 4]!
  const radius = Math.sqrt(square)
  return 1e3 * Math.max(Math.sqrt(square + spread) - radius, radius - Math.sqrt(Math.max(0, square - spread)))
}
