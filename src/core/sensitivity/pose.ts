import { type Mat3, type Vec3, ZERO } from "../solids"

/** How a pose's rotation and gravity's direction in bow axes change, per radian. */
export interface PoseRates {
  readonly rotation: Mat3
  readonly gravity: Vec3
}

export const NO_POSE_RATES: PoseRates = { rotation: [ZERO, ZERO, ZERO], gravity: ZERO }

/** Derivative of poseRotation(slope, cant) = Rz(slope)·Rx(cant) by the slope, and of gravity's Rᵀ(0, -1, 0). Radians. */
export function slopeRates(slope: number, cant: number): PoseRates {
  const [cs, ss, cc, sc] = [Math.cos(slope), Math.sin(slope), Math.cos(cant), Math.sin(cant)]
  return {
    rotation: [
      [-ss, -cs * cc, cs * sc],
      [cs, -ss * cc, ss * sc],
      [0, 0, 0],
    ],
    gravity: [-cs, ss * cc, -ss * sc],
  }
}

/** The same by the cant. */
export function cantRates(slope: number, cant: number): PoseRates {
  const [cs, ss, cc, sc] = [Math.cos(slope), Math.sin(slope), Math.cos(cant), Math.sin(cant)]
  return {
    rotation: [
      [0, ss * sc, ss * cc],
      [0, -cs * sc, -cs * cc],
      [0, cc, -sc],
    ],
    gravity: [0, cs * sc, cs * cc],
  }
}
