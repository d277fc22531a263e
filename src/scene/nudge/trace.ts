import {
  type Landing,
  landing,
  noseDrop,
  type Nudge,
  nudged,
  type NudgeTrace,
  resistsEverywhere,
} from "../../core/nudge"
import type { Vec3 } from "../../core/solids"
import { nudgeNames } from "../../words/nudgeNames"
import { failure, type Result, success } from "../errors"
import type { Evaluation } from "../evaluate"
import { quickTensor, type ShotBow, shotBow } from "./body"
import { coreHold, heldBy, type HoldChoice } from "./hold"

/** Motions of a bow, in the order of the axes that they turn about: x, y, z. */
export const motions = ["roll", "yaw", "pitch"] as const
export type Motion = (typeof motions)[number]

/** What is done to a bow, in units of `nudgeFields`. */
export interface NudgeQuestion {
  readonly kind: "knock" | "push"
  readonly motion: Motion
  /** N·m·s. */
  readonly impulse: number
  /** N·m, for `lastingS` s. */
  readonly push: number
  readonly lastingS: number
  readonly hold: HoldChoice
}

/** Between samples, s. */
export const SAMPLE_S = 0.001
/** How long a nudged bow is followed, s. */
export const WATCHED_S = 1
const SAMPLES = Math.round(WATCHED_S / SAMPLE_S) + 1

const about = (motion: Motion, size: number): Vec3 => {
  const of = (each: Motion) => (each === motion ? size : 0)
  return [of("roll"), of("yaw"), of("pitch")]
}

const NONE: Vec3 = [0, 0, 0]

function coreNudge({ kind, motion, impulse, push, lastingS }: NudgeQuestion): Nudge {
  if (kind === "knock") return { impulse: about(motion, impulse), push: NONE, lasting: 0 }
  return { impulse: NONE, push: about(motion, push), lasting: lastingS }
}

/** A bow of points on one line, which no nudge can be told of. */
const noResistance = failure({
  code: "unsolvable",
  path: "bow.riser.gyrationMm",
  message: nudgeNames.noResistance,
})

/**
 * Follows a bow, level at full draw with its arrow, through a nudge: rad about x, y, z, a sample each `SAMPLE_S`. Fails
 * for a bow without turn resistance about some axis.
 */
export function nudgeTrace(evaluation: Evaluation, question: NudgeQuestion): Result<NudgeTrace> {
  const tensor = quickTensor(evaluation.fullDraw)
  if (!resistsEverywhere(tensor)) return noResistance
  const hold = coreHold(heldBy(question.hold, evaluation))
  return success(nudged(tensor, hold, coreNudge(question), SAMPLE_S, SAMPLES))
}

/** Where an arrow goes that leaves `leavesS` s after the nudge began, m beside the aim on a target `distance` m away. */
export const landingOf = (trace: NudgeTrace, leavesS: number, distance: number): Landing =>
  landing(anglesAt(trace, leavesS), distance)

/** The turn at a time, rad: between two samples on the straight line through them, at the ends the last one. */
export function anglesAt({ step, angles }: NudgeTrace, time: number): Vec3 {
  const place = Math.min(angles.length - 1, Math.max(0, time / step))
  const before = Math.floor(place)
  const share = place - before
  const [a, b] = [angles[before]!, angles[Math.min(angles.length - 1, before + 1)]!]
  return [0, 1, 2].map((axis) => a[axis]! + share * (b[axis]! - a[axis]!)) as unknown as Vec3
}

/** A drop is followed to this angle, rad: beyond it the weight's arm is no longer what it was at first. */
const SMALL = Math.PI / 6
const LONGEST_DROP_S = 0.5

/** Front of a bow after the shot: its numbers and how it drops, one sample each `SAMPLE_S`. */
export interface Drop {
  readonly bow: ShotBow
  readonly trace: NudgeTrace
}

/** How the fronts of bows drop when the hand lets them turn, for as long as all of them stay within 30°. */
export function noseDrops(evaluations: readonly Evaluation[]): Result<Drop[]> {
  const bows: ShotBow[] = []
  for (const { scene } of evaluations) {
    const bow = shotBow(scene)
    if (!bow.ok) return bow
    if (!(bow.value.pitchInertia > 0)) return noResistance
    bows.push(bow.value)
  }
  const within = bows.map(({ noseDown, pitchInertia }) => Math.sqrt((2 * SMALL * pitchInertia) / Math.abs(noseDown)))
  const count = Math.floor(Math.min(LONGEST_DROP_S, ...within) / SAMPLE_S) + 1
  return success(bows.map((bow) => ({ bow, trace: dropTrace(bow, count) })))
}

function dropTrace({ noseDown, pitchInertia }: ShotBow, count: number): NudgeTrace {
  const times = Array.from({ length: count }, (_, index) => index * SAMPLE_S)
  return {
    step: SAMPLE_S,
    angles: times.map((time): Vec3 => [0, 0, 0 - noseDrop(noseDown, pitchInertia, time)]),
    rates: times.map((time): Vec3 => [0, 0, 0 - (noseDown / pitchInertia) * time]),
  }
}
