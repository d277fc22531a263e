import { type MassMoments, movedRates, NO_MOMENTS } from "../sensitivity"
import { NO_TENSOR, pointTensor, type Vec3 } from "../solids"

/** The body that is measured, the riser: kg, m, bow axes. */
export interface MeasuredBody {
  readonly mass: number
  readonly centre: Vec3
  /**
   * Squared radii of gyration about its own centre, m²: roll, yaw, pitch. Squares, since those enter linearly and a
   * noisy reading may well make one negative on the way; radii only exist where they are not.
   */
  readonly squares: Vec3
}

/** What is looked for, in the order every vector and matrix of this folder has. */
export const unknowns = ["mass", "forward", "up", "side", "roll", "yaw", "pitch"] as const
export type Unknown = (typeof unknowns)[number]

/**
 * How far each may lie from what was assumed on any bow: 1 kg, 100 mm, (100 mm)². Vectors are divided by these before
 * anything is compared, so that kilograms and metres weigh alike.
 */
export const plausible: readonly number[] = [1, 0.1, 0.1, 0.1, 0.01, 0.01, 0.01]

export const vectorOf = ({ mass, centre, squares }: MeasuredBody): number[] => [mass, ...centre, ...squares]

export function bodyOf(vector: readonly number[]): MeasuredBody {
  const [mass, x, y, z, roll, yaw, pitch] = vector as [number, number, number, number, number, number, number]
  return { mass, centre: [x, y, z], squares: [roll, yaw, pitch] }
}

/** Mass, first moment and tensor of the body about the grip. */
export function bodyMoments({ mass, centre, squares }: MeasuredBody): MassMoments {
  const [x, y, z] = centre
  const own = pointTensor(mass, centre)
  return {
    mass,
    first: [mass * x, mass * y, mass * z],
    aboutOrigin: {
      ...own,
      xx: own.xx + mass * squares[0],
      yy: own.yy + mass * squares[1],
      zz: own.zz + mass * squares[2],
    },
  }
}

/** Exact rates of those by each of the unknowns, in their order, per kg, m and m². */
export function bodyRates(body: MeasuredBody): MassMoments[] {
  const moments = bodyMoments(body)
  const turned = (xx: number, yy: number, zz: number): MassMoments => ({
    ...NO_MOMENTS,
    aboutOrigin: { ...NO_TENSOR, xx, yy, zz },
  })
  return [
    bodyMoments({ ...body, mass: 1 }),
    movedRates(moments, [1, 0, 0]),
    movedRates(moments, [0, 1, 0]),
    movedRates(moments, [0, 0, 1]),
    turned(body.mass, 0, 0),
    turned(0, body.mass, 0),
    turned(0, 0, body.mass),
  ]
}
