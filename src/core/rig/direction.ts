import type { Vec3 } from "../solids"

/**
 * Direction of a mount's chain: (cos p cos a, sin p, -cos p sin a), p up from level, a to the left.
 * 0/0 points at the target, a = π straight back. Radians.
 */
export function mountDirection(pitch: number, yaw: number): Vec3 {
  const level = Math.cos(pitch)
  return [level * Math.cos(yaw), Math.sin(pitch), 0 - level * Math.sin(yaw)]
}

export type Side = "left" | "right"

/**
 * Direction of a V-bar's arm: splay 0 is straight back to the archer, π/2 straight out to its side, more is swept
 * forward; droop is below the bow's horizontal. So spreading or drooping a backward arm moves its end forward.
 */
export function armDirection(splay: number, droop: number, side: Side): Vec3 {
  const level = Math.cos(droop)
  const out = level * Math.sin(splay)
  return [0 - level * Math.cos(splay), 0 - Math.sin(droop), side === "right" ? out : 0 - out]
}

/** Unit rate of turn ω with d(armDirection)/d(splay) = ω × direction: about the bow's y. */
export const splayTurn = (side: Side): Vec3 => (side === "right" ? [0, 1, 0] : [0, -1, 0])

/** Unit rate of turn ω with d(armDirection)/d(droop) = ω × direction: about the level line across the arm. */
export function droopTurn(splay: number, side: Side): Vec3 {
  const k = side === "right" ? 1 : -1
  return [k * Math.sin(splay), 0, Math.cos(splay)]
}

/** Unit rate of turn ω with d(mountDirection)/d(yaw) = ω × direction: about the bow's y. */
export const yawTurn: Vec3 = [0, 1, 0]

/** Unit rate of turn ω with d(mountDirection)/d(pitch) = ω × direction: about the level line across the chain. */
export const pitchTurn = (yaw: number): Vec3 => [Math.sin(yaw), 0, Math.cos(yaw)]
