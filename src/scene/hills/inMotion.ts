import { principal, type Vec3 } from "../../core/solids"
import { swingSolids } from "../../core/swing"
import { type Evaluation, partsBalance } from "../evaluate"

/**
 * A bow in the middle of a motion: raised to `slopeDeg`, its swing weights with their stems along `stems`, unit
 * directions in bow axes by part path; a weight that is not named stays in its joint as it was. Everything of the bow's
 * present pose follows; full draw and the bare bow are what they were.
 */
export function inMotion(evaluation: Evaluation, slopeDeg: number, stems: ReadonlyMap<string, Vec3>): Evaluation {
  const { parts, limbs, pose } = evaluation.now
  const moved = parts.map((part) => {
    const direction = stems.get(part.path)
    if (part.hung === undefined || direction === undefined) return part
    const { weight, hinge } = part.hung
    return {
      ...part,
      hung: { ...part.hung, rest: { direction, onStop: false } },
      solids: swingSolids(weight, hinge, direction),
    }
  })
  const now = partsBalance(moved, limbs, { ...pose, slopeDeg })
  return { ...evaluation, now, principal: principal(now.aboutCentre) }
}
