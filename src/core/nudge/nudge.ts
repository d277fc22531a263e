import { cross, dot, type Tensor, tensorMatrix, type Vec3 } from "../solids"
import { exponential, type Square, times } from "./exponential"
import { inverse } from "./inverse"

/** What the hand and the string do against a turn of the bow about the grip, each bow axis by itself. */
export interface Hold {
  /** N·m/rad about x (roll), y (yaw), z (pitch); 0: nothing brings the bow back. */
  readonly stiffness: Vec3
  /** N·m·s/rad about the same axes. */
  readonly damping: Vec3
}

/** What turns the bow: a knock at time 0, and a push that lasts. Both about the grip, bow axes. */
export interface Nudge {
  /** Angular impulse, N·m·s. */
  readonly impulse: Vec3
  /** Moment, N·m, from time 0 for `lasting` s. */
  readonly push: Vec3
  readonly lasting: number
}

/** Turn of the bow against time: sample k is at k·`step` s. */
export interface NudgeTrace {
  readonly step: number
  /** rad about x (roll), y (yaw), z (pitch), small angles. */
  readonly angles: readonly Vec3[]
  /** rad/s. */
  readonly rates: readonly Vec3[]
}

/** Angles, rates and the constant 1 that carries the push: one linear system. */
const SIZE = 7

/**
 * How a bow turns about the grip when nudged: I·φ̈ + C·φ̇ + K·φ = τ(t) for small angles φ, with the whole tensor, so that
 * a nudge about one axis turns the others too. The system is linear with constant coefficients, so each step is taken
 * with its exponential: the samples are exact whatever the step.
 *
 * @param inertiaAboutGrip kg·m², bow axes.
 * @param step s, above 0. @param count samples, the first at time 0.
 * @throws RangeError for a tensor no turning body has, a stiffness or damping below 0, or a number that is not finite.
 */
export function nudged(inertiaAboutGrip: Tensor, hold: Hold, nudge: Nudge, step: number, count: number): NudgeTrace {
  const resistance = inverse(tensorMatrix(inertiaAboutGrip))
  if (resistance === null || !resistsEverywhere(inertiaAboutGrip))
    throw new RangeError("a bow that is nudged needs turn resistance about every axis")
  if (![...hold.stiffness, ...hold.damping].every((value) => value >= 0 && Number.isFinite(value))) {
    throw new RangeError("stiffness and damping of a hold are finite and not below 0")
  }
  if (![...nudge.impulse, ...nudge.push].every(Number.isFinite)) throw new RangeError("a nudge is finite")
  if (!(step > 0) || !(nudge.lasting >= 0)) throw new RangeError("a nudge needs a step above 0 s and lasts 0 s or more")
  const turning = (moment: Vec3): Vec3 => [
    dot(resistance[0], moment),
    dot(resistance[1], moment),
    dot(resistance[2], moment),
  ]
  const system = (push: Vec3): Square => {
    const rows = Array.from({ length: SIZE }, () => new Float64Array(SIZE))
    const pushed = turning(push)
    for (let i = 0; i < 3; i++) {
      rows[i]![3 + i] = 1
      for (let j = 0; j < 3; j++) {
        rows[3 + i]![j] = -resistance[i]![j]! * hold.stiffness[j]!
        rows[3 + i]![3 + j] = -resistance[i]![j]! * hold.damping[j]!
      }
      rows[3 + i]![6] = pushed[i]!
    }
    return rows
  }
  const [during, after] = [system(nudge.push), system([0, 0, 0])]
  const over = (rows: Square, seconds: number) => exponential(rows.map((row) => row.map((value) => value * seconds)))
  const [pushedStep, freeStep] = [over(during, step), over(after, step)]

  let state = Float64Array.from([0, 0, 0, ...turning(nudge.impulse), 1])
  const angles: Vec3[] = []
  const rates: Vec3[] = []
  for (let k = 0; k < count; k++) {
    angles.push([state[0]!, state[1]!, state[2]!])
    rates.push([state[3]!, state[4]!, state[5]!])
    const left = nudge.lasting - k * step
    // The push ends within this step: each part of the step by its own system.
    const ending = left > 0 && left < step
    const taken = ending ? times(over(after, step - left), over(during, left)) : left > 0 ? pushedStep : freeStep
    state = taken.map((row) => row.reduce((sum, value, j) => sum + value * state[j]!, 0)) as unknown as typeof state
  }
  return { step, angles, rates }
}

/** Whether every axis has a moment of inertia above 0, as a nudge needs: the tensor's leading minors all are (Sylvester). */
export function resistsEverywhere(t: Tensor): boolean {
  const [a, b, c] = tensorMatrix(t)
  return t.xx > 0 && t.xx * t.yy - t.xy ** 2 > 0 && dot(a, cross(b, c)) > 0
}

/** Kinetic energy of the turn and what is stored in the hold, J. */
export function nudgeEnergy(inertiaAboutGrip: Tensor, { stiffness }: Hold, angle: Vec3, rate: Vec3): number {
  const momentum = angularMomentum(inertiaAboutGrip, rate)
  return dot(rate, momentum) / 2 + stiffness.reduce((sum, k, axis) => sum + (k * angle[axis]! ** 2) / 2, 0)
}

/** I·ω about the grip, N·m·s, bow axes. */
export function angularMomentum(inertiaAboutGrip: Tensor, rate: Vec3): Vec3 {
  const [a, b, c] = tensorMatrix(inertiaAboutGrip)
  return [dot(a, rate), dot(b, rate), dot(c, rate)]
}
