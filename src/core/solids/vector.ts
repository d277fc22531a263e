/** Three components along bow axes: x forward, y up, z to the archer's right. Metres unless said. */
export type Vec3 = readonly [number, number, number]
/** Row-major 3×3. */
export type Mat3 = readonly [Vec3, Vec3, Vec3]

export const ZERO: Vec3 = [0, 0, 0]

export const add = (a: Vec3, b: Vec3): Vec3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
export const subtract = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
export const scale = (a: Vec3, k: number): Vec3 => [a[0] * k, a[1] * k, a[2] * k]
/** a + k·d. */
export const along = (a: Vec3, d: Vec3, k: number): Vec3 => [a[0] + d[0] * k, a[1] + d[1] * k, a[2] + d[2] * k]
export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]
export const norm = (a: Vec3): number => Math.sqrt(dot(a, a))
export const distance = (a: Vec3, b: Vec3): number => norm(subtract(a, b))
export const midpoint = (a: Vec3, b: Vec3): Vec3 => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]

/** Unit vector along a; the zero vector has no direction and throws RangeError. */
export function unit(a: Vec3): Vec3 {
  const length = norm(a)
  if (!(length > 0)) throw new RangeError("a vector of length zero has no direction")
  return scale(a, 1 / length)
}

export const multiply = (m: Mat3, a: Vec3): Vec3 => [dot(m[0], a), dot(m[1], a), dot(m[2], a)]
export const transpose = (m: Mat3): Mat3 => [
  [m[0][0], m[1][0], m[2][0]],
  [m[0][1], m[1][1], m[2][1]],
  [m[0][2], m[1][2], m[2][2]],
]
