import {
  add,
  axisymmetricTensor,
  distance,
  dot,
  norm,
  pointTensor,
  scale,
  subtract,
  type Tensor,
  type Vec3,
  ZERO,
} from "../solids"
import type { MassMoments } from "./massMoments"

/** A change of shape about an unmoved centre: only the tensor changes. */
const reshaped = (aboutOrigin: Tensor): MassMoments => ({ mass: 0, first: ZERO, aboutOrigin })

/** Per metre of length, a tube of `mass` (kg) and `length` (m) along the unit `d`, centre unmoved: m·2L/12 across d. */
export const tubeLengthRates = (mass: number, length: number, d: Vec3): MassMoments =>
  reshaped(axisymmetricTensor(0, (mass * length) / 6, d))

/**
 * Per metre of either `radius` (m) of a tube of `mass` (kg) along the unit `d`: from m(ro² + ri²)/2 along and
 * m(3(ro² + ri²) + L²)/12 across, the mass staying the same.
 */
export const tubeRadiusRates = (mass: number, radius: number, d: Vec3): MassMoments =>
  reshaped(axisymmetricTensor(mass * radius, (mass * radius) / 2, d))

/** Per metre of the edge along bow axis `axis` (0 x, 1 y, 2 z) of a box of `mass` (kg), that edge `edge` m long. */
export const boxEdgeRates = (mass: number, edge: number, axis: number): MassMoments =>
  reshaped(acrossAxis((mass * edge) / 6, axis))

/** Per metre of the radius of gyration `radius` (m) about bow axis `axis` of a body of `mass` (kg): 2·m·k. */
export function gyrationRates(mass: number, radius: number, axis: number): MassMoments {
  const rate = 2 * mass * radius
  return reshaped({
    xx: axis === 0 ? rate : 0,
    yy: axis === 1 ? rate : 0,
    zz: axis === 2 ? rate : 0,
    xy: 0,
    xz: 0,
    yz: 0,
  })
}

const acrossAxis = (k: number, axis: number): Tensor => ({
  xx: axis === 0 ? 0 : k,
  yy: axis === 1 ? 0 : k,
  zz: axis === 2 ? 0 : k,
  xy: 0,
  xz: 0,
  yz: 0,
})

/** A point that moves: place (m) and velocity (m per unit), bow axes. */
export interface MovingPoint {
  readonly at: Vec3
  readonly rate: Vec3
}

/**
 * Rates of a slender straight rod of `mass` (kg) that gains `massRate` (kg per unit) while its ends move. Its
 * second moment is m/3·(aaᵀ + (abᵀ + baᵀ)/2 + bbᵀ) = m/6·(aaᵀ + bbᵀ + (a+b)(a+b)ᵀ) for ends a and b, so ends
 * that coincide need no special case.
 */
export function slenderRates(mass: number, massRate: number, a: MovingPoint, b: MovingPoint): MassMoments {
  const sum = add(a.at, b.at)
  const sumRate = add(a.rate, b.rate)
  const place = [pointTensor(1, a.at), pointTensor(1, b.at), pointTensor(1, sum)]
  const rate = [pointRate(a.at, a.rate), pointRate(b.at, b.rate), pointRate(sum, sumRate)]
  return {
    mass: massRate,
    first: add(scale(sum, massRate / 2), scale(sumRate, mass / 2)),
    aboutOrigin: weighted([...place, ...rate], [massRate, massRate, massRate, mass, mass, mass]),
  }
}

/** Rate of pointTensor(1, r) for a point moving with v. */
const pointRate = (r: Vec3, v: Vec3): Tensor => ({
  xx: 2 * (r[1] * v[1] + r[2] * v[2]),
  yy: 2 * (r[0] * v[0] + r[2] * v[2]),
  zz: 2 * (r[0] * v[0] + r[1] * v[1]),
  xy: 0 - r[0] * v[1] - r[1] * v[0],
  xz: 0 - r[0] * v[2] - r[2] * v[0],
  yz: 0 - r[1] * v[2] - r[2] * v[1],
})

/** Sum of kᵢ·tᵢ/6. */
function weighted(tensors: readonly Tensor[], weights: readonly number[]): Tensor {
  const element = (name: keyof Tensor) => tensors.reduce((sum, t, i) => sum + (t[name] * (weights[i] ?? 0)) / 6, 0)
  return {
    xx: element("xx"),
    yy: element("yy"),
    zz: element("zz"),
    xy: element("xy"),
    xz: element("xz"),
    yz: element("yz"),
  }
}

/**
 * Rates of a slender line of `mass` (kg, gaining `massRate`) through moving points, its mass spread evenly over its
 * whole length: a string. A piece of no length grows at the speed at which its ends part. At least two points, not
 * all in one place, else the spread is not defined and the rates are NaN.
 */
export function lineRates(mass: number, massRate: number, points: readonly MovingPoint[]): readonly MassMoments[] {
  const pieces = points.slice(1).map((b, i) => ({ a: points[i] as MovingPoint, b }))
  const lengths = pieces.map(({ a, b }) => distance(a.at, b.at))
  const rates = pieces.map(({ a, b }, i) => lengthRate(a, b, lengths[i] ?? 0))
  const total = lengths.reduce((sum, length) => sum + length, 0)
  const totalRate = rates.reduce((sum, rate) => sum + rate, 0)
  return pieces.map(({ a, b }, i) => {
    const share = (lengths[i] ?? 0) / total
    const shareRate = ((rates[i] ?? 0) - share * totalRate) / total
    return slenderRates(mass * share, massRate * share + mass * shareRate, a, b)
  })
}

function lengthRate(a: MovingPoint, b: MovingPoint, length: number): number {
  const parting = subtract(b.rate, a.rate)
  return length > 0 ? dot(subtract(b.at, a.at), parting) / length : norm(parting)
}
