import type { Solid } from "../core/solids"
import type { WeighedPart } from "../scene/evaluate"

/** Whether two parts weigh the same and stand at the same place, so that drawing both would show one. */
export function samePart(a: WeighedPart, b: WeighedPart | undefined): boolean {
  if (b === undefined || a.kind !== b.kind || a.solids.length !== b.solids.length) return false
  return (
    a.solids.every((solid, index) => sameSolid(solid, b.solids[index]!)) && a.axis?.outerRadius === b.axis?.outerRadius
  )
}

const sameSolid = (a: Solid, b: Solid): boolean =>
  a === b ||
  (a.mass === b.mass &&
    a.centre.every((at, axis) => at === b.centre[axis]) &&
    (["xx", "yy", "zz", "xy", "xz", "yz"] as const).every((key) => a.aboutCentre[key] === b.aboutCentre[key]))
