import type { Mat3, Vec3 } from "../solids"

/**
 * How the bow is held: R = Rz(slope)·Rx(cant) takes bow axes to world axes. It is first canted about its
 * own x (positive: top to the right), then raised (positive: front up). Radians.
 */
export function poseRotation(slope: number, cant: number): Mat3 {
  const [cs, ss, cc, sc] = [Math.cos(slope), Math.sin(slope), Math.cos(cant), Math.sin(cant)]
  return [
    [cs, -ss * cc, ss * sc],
    [ss, cs * cc, -cs * sc],
    [0, sc, cc],
  ]
}

/** Unit vector along gravity in bow axes, Rᵀ(0, -1, 0). */
export function gravityInBow(rotation: Mat3): Vec3 {
  const up = rotation[1]
  // Subtracting from zero keeps a level bow's components +0, never -0.
  return [0 - up[0], 0 - up[1], 0 - up[2]]
}
