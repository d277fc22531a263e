import type { Solid } from "../core/solids"
import type { Evaluation, WeighedPart } from "../scene/evaluate"
import type { Pose } from "../scene/schema"

/** Whether two parts weigh the same and stand at the same place, so that drawing both would show one. */
export function samePart(a: WeighedPart, b: WeighedPart | undefined): boolean {
  if (b === undefined || a.kind !== b.kind || a.solids.length !== b.solids.length) return false
  return (
    a.solids.every((solid, index) => sameSolid(solid, b.solids[index]!)) && a.axis?.outerRadius === b.axis?.outerRadius
  )
}

/**
 * The parts of a setup beside that would not lie under the present ones in a picture: those that are elsewhere on the
 * bow, and all of a bow that is not held as the present one is.
 */
export function partsApart(
  { parts, pose }: Evaluation["now"],
  { slopeDeg, cantDeg }: Pose,
  here: ReadonlyMap<string, WeighedPart>,
): readonly WeighedPart[] {
  if (pose.slopeDeg !== slopeDeg || pose.cantDeg !== cantDeg) return parts
  return parts.filter((part) => !samePart(part, here.get(part.path)))
}

const sameSolid = (a: Solid, b: Solid): boolean =>
  a === b ||
  (a.mass === b.mass &&
    a.centre.every((at, axis) => at === b.centre[axis]) &&
    (["xx", "yy", "zz", "xy", "xz", "yz"] as const).every((key) => a.aboutCentre[key] === b.aboutCentre[key]))
