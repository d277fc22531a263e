import type { BracedLimbs, LimbResult, LimbSetup, LimbState, RecurveLimb } from "../../../src/core/limbs"
import { solveBrace, solveDrawn } from "../../../src/core/limbs"

const degree = Math.PI / 180

/** An invented target recurve: 68 inches or so, 40 lbf. */
export const targetLimb: RecurveLimb = {
  rootForward: 0.013,
  rootOut: 0.29,
  length: 0.6,
  rootAngle: 14 * degree,
  recurve: 75 * degree,
  recurveFrom: 0.6,
  stiffnessTaper: 0.35,
  massTaper: 0.5,
  mass: 0.16,
}

export const targetBow: LimbSetup = { limb: targetLimb, braceHeight: 0.22, drawLength: 0.665, drawWeight: 178 }
export const wrappedBow: LimbSetup = { ...targetBow, stringWrap: true }

/** An invented short bow with a heavy reflex: unlike the target bow in every number. */
export const shortBow: LimbSetup = {
  limb: {
    rootForward: -0.021,
    rootOut: 0.23,
    length: 0.47,
    rootAngle: 7 * degree,
    recurve: 33 * degree,
    recurveFrom: 0.45,
    stiffnessTaper: 0.7,
    massTaper: 0.3,
    mass: 0.11,
  },
  braceHeight: 0.19,
  drawLength: 0.59,
  drawWeight: 131,
}

export function value<T>(result: LimbResult<T>): T {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}

export const braced = (setup: LimbSetup): BracedLimbs => value(solveBrace(setup))
export const drawn = (limbs: BracedLimbs, draw: number): LimbState => value(solveDrawn(limbs, draw))

export const withLimb = (setup: LimbSetup, change: Partial<RecurveLimb>): LimbSetup => ({
  ...setup,
  limb: { ...setup.limb, ...change },
})
