import { notALimb } from "./failures"
import type { LimbFailure, LimbSetup } from "./types"

/** The first number of a setup that no limb can have; null when there is none. */
export function invalidSetup({ limb, braceHeight, drawLength, drawWeight }: LimbSetup): LimbFailure | null {
  const lengths = { rootForward: limb.rootForward, braceHeight, drawLength } as const
  for (const [name, value] of Object.entries(lengths) as [keyof typeof lengths, number][]) {
    if (!Number.isFinite(value)) return notALimb(name, "not-finite")
  }
  const positive = {
    rootOut: limb.rootOut,
    length: limb.length,
    stiffnessTaper: limb.stiffnessTaper,
    drawWeight,
  } as const
  for (const [name, value] of Object.entries(positive) as [keyof typeof positive, number][]) {
    if (!(value > 0 && Number.isFinite(value))) return notALimb(name, "not-positive")
  }
  for (const name of ["mass", "massTaper"] as const) {
    if (!(limb[name] >= 0 && Number.isFinite(limb[name]))) return notALimb(name, "negative")
  }
  for (const name of ["rootAngle", "recurve"] as const) {
    if (!(Math.abs(limb[name]) <= Math.PI)) return notALimb(name, "beyond-half-turn")
  }
  if (!(limb.recurveFrom >= 0 && limb.recurveFrom < 1)) {
    return notALimb("recurveFrom", "recurve-past-tip")
  }
  return null
}
