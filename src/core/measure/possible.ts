import type { Vec3 } from "../solids"

/**
 * Which of the rules of radii of gyration are broken, by the axis whose square is too large: none may exceed the other
 * two together (and none be negative, which follows).
 */
export const brokenRules = (squares: Vec3): number[] =>
  [0, 1, 2].filter((axis) => squares[axis]! > squares[(axis + 1) % 3]! + squares[(axis + 2) % 3]!)

/** Squares that broke a rule by rounding alone, made to meet it: with squared extents below zero taken as zero. */
export function exactRules([roll, yaw, pitch]: Vec3): Vec3 {
  const across = [(yaw + pitch - roll) / 2, (roll + pitch - yaw) / 2, (roll + yaw - pitch) / 2]
  const [x, y, z] = across.map((extent) => Math.max(0, extent)) as [number, number, number]
  return [y + z, x + z, x + y]
}
