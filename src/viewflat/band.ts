import type { Vec3 } from "../core/solids"
import { MM } from "../scene/assemble"
import type { Target } from "../scene/schema"

/** A target that says nothing about height or side is drawn this far either way from the grip, m. */
const OPEN = { up: 0.24, side: 0.1 }

/** The target for the balance point as a box along the bow's axes, m; null where none is set. */
export function bandOf(target: Target): { readonly centre: Vec3; readonly size: Vec3 } | null {
  const { forwardMm, upMm, sideMm } = target
  if (forwardMm === undefined) return null
  const ranges = [forwardMm, upMm ?? [-OPEN.up / MM, 0.6 * (OPEN.up / MM)], sideMm ?? [-OPEN.side / MM, OPEN.side / MM]]
  const middle = (index: number) => ((ranges[index]![0]! + ranges[index]![1]!) / 2) * MM
  const span = (index: number) => (ranges[index]![1]! - ranges[index]![0]!) * MM
  return { centre: [middle(0), middle(1), middle(2)], size: [span(0), span(1), span(2)] }
}
