import type { Vec3 } from "../../core/solids"

/**
 * How fast the figures change with one slot, per file unit of the slot (per mm, g, °, lbf, disc, whole of a
 * fraction …). Names and units of the figures are those of the report.
 */
export interface Sensitivity {
  readonly massG: number
  /** Forward, up, side. */
  readonly centreMm: Vec3
  /** At the pose, about the grip. */
  readonly noseDownNm: number
  readonly cantRightNm: number
  /** kg·m² about the grip. */
  readonly inertiaGrip: { readonly pitch: number; readonly roll: number; readonly yaw: number }
  /** Level at full draw. */
  readonly fullDraw: {
    readonly netLiftNm: number
    readonly balancedForwardMm: number
    readonly liftNm: number
  }
}
