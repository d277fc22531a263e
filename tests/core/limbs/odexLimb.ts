import type { BracedLimbs } from "../../../src/core/limbs"
import { Solver } from "../../tools/odex.mjs"

export interface OdexLimb {
  tipForward: number
  tipOut: number
  /** tension · length² / root stiffness */
  load: number
}

/**
 * The same drawn limb by other means: from the root to the tip in the bow's frame, in metres, with Hairer's
 * extrapolation code (npm odex, after Hairer, Nørsett and Wanner, Solving Ordinary Differential Equations I, II.9) and a
 * secant-slope Newton iteration on the tip's place and the tension. Tip model only.
 */
export function shootWithOdex(limbs: BracedLimbs, draw: number, start: OdexLimb, tolerance: number): OdexLimb {
  const { limb } = limbs.setup
  const endOf = (guess: OdexLimb): [number, number] => {
    const pullForward = -draw - guess.tipForward
    const pullOut = -guess.tipOut
    const scale = guess.load / limb.length ** 2 / Math.hypot(pullForward, pullOut)
    const slopes = (natural: number) => (s: number, y: number[]) => {
      const [angle, forward, out] = y as [number, number, number]
      const moment = scale * ((guess.tipForward - forward) * pullOut - (guess.tipOut - out) * pullForward)
      const stiffness = 1 - (1 - limb.stiffnessTaper) * (s / limb.length)
      return [natural - moment / stiffness, Math.sin(angle), Math.cos(angle)]
    }
    const solver = new Solver(3)
    solver.absoluteTolerance = tolerance
    solver.relativeTolerance = tolerance
    const bend = limb.recurveFrom * limb.length
    const natural = limb.recurve / (limb.length - bend)
    const middle = solver.solve(slopes(0), 0, [limb.rootAngle, limb.rootForward, limb.rootOut], bend).y
    const end = solver.solve(slopes(natural), bend, middle, limb.length).y as [number, number, number]
    return [end[1], end[2]]
  }
  const errors = (guess: OdexLimb): number[] => {
    const [forward, out] = endOf(guess)
    const string = Math.hypot(guess.tipForward + draw, guess.tipOut)
    return [forward - guess.tipForward, out - guess.tipOut, string - limbs.halfString]
  }
  let guess = start
  for (let round = 0; round < 20; round += 1) {
    const at = errors(guess)
    if (Math.hypot(...at) < tolerance) return guess
    const nudge = 1e-6
    const columns = (["tipForward", "tipOut", "load"] as const).map((name) =>
      errors({ ...guess, [name]: guess[name] + nudge }).map((error, row) => (error - (at[row] as number)) / nudge),
    ) as [number[], number[], number[]]
    const [a, b, c] = solveThree(columns, at)
    guess = { tipForward: guess.tipForward - a, tipOut: guess.tipOut - b, load: guess.load - c }
  }
  throw new Error("the shooting iteration did not arrive")
}

/** Cramer's rule on the columns of a 3×3 system. */
function solveThree(columns: [number[], number[], number[]], right: number[]): [number, number, number] {
  const determinant = ([a, b, c]: number[][]): number => {
    const [a0, a1, a2] = a as [number, number, number]
    const [b0, b1, b2] = b as [number, number, number]
    const [c0, c1, c2] = c as [number, number, number]
    return a0 * (b1 * c2 - b2 * c1) - b0 * (a1 * c2 - a2 * c1) + c0 * (a1 * b2 - a2 * b1)
  }
  const whole = determinant(columns)
  const [a, b, c] = columns
  return [determinant([right, b, c]) / whole, determinant([a, right, c]) / whole, determinant([a, b, right]) / whole]
}
