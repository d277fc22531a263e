import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { cantRates, type MassMoments, NO_MOMENTS, slopeRates } from "../../core/sensitivity"
import { type Mat3, scale } from "../../core/solids"
import type { Evaluation, PoseBalance } from "../evaluate"
import type { Scene } from "../schema"
import { slotsOf } from "../slots"
import { accessoryRates } from "./accessoryRates"
import { bowRates } from "./bowRates"
import { figureRates, holdRates } from "./figureRates"
import type { Rates } from "./rates"
import { rigRates } from "./rigRates"
import type { Sensitivity } from "./sensitivity"
import { swingingRates } from "./swings"

export type { Sensitivity } from "./sensitivity"

/**
 * Exact derivatives of the figures of an evaluated scene by every one of its slots, by slot key. The target's slots
 * are left out: nothing depends on them. No differences are taken: a slot adds mass, moves, turns or reshapes known
 * bodies, and the rates of all figures follow from those of mass, first moment and tensor.
 *
 * Counts of discs are taken as continuous. Where a figure has a kink the derivative is one-sided, towards a larger
 * value of the slot: a swing weight just at its stop is held if the change drives it on and free if not. At brace
 * the draw's derivative leaves out the arrow, which appears all at once. Mass added to a part without any is
 * spread as that part is shaped.
 */
export function sensitivities(scene: Scene, evaluation: Evaluation): ReadonlyMap<string, Sensitivity> {
  const now = massRates(scene, evaluation.now)
  const drawn = massRates(scene, evaluation.fullDraw)
  const rotations = rotationRates(evaluation.now)
  const holds = holdRates(scene)
  const result = new Map<string, Sensitivity>()
  for (const { key, owner } of slotsOf(scene)) {
    if (owner === "target") continue
    result.set(
      key,
      figureRates(evaluation, {
        now: rateOf(now, key),
        // At full draw the bow is always level and drawn to the full, whatever the pose.
        drawn: owner === "pose" ? NO_MOMENTS : rateOf(drawn, key),
        rotation: rotations.get(key),
        hold: holds.get(key),
      }),
    )
  }
  return result
}

/** The same for the slots of mounts and rig alone, where the bow's are not asked for: it needs no limb's answer. */
export function rigSensitivities(scene: Scene, evaluation: Evaluation): ReadonlyMap<string, Sensitivity> {
  const now: Rates = new Map()
  const drawn: Rates = new Map()
  rigRates(scene, evaluation.now, now)
  rigRates(scene, evaluation.fullDraw, drawn)
  return new Map(
    [...now].map(([key, rate]) => [key, figureRates(evaluation, { now: rate, drawn: rateOf(drawn, key) })]),
  )
}

function rateOf(rates: Rates, key: string): MassMoments {
  const rate = rates.get(key)
  if (rate === undefined) throw new RangeError(`no rate is known for ${key}`)
  return rate
}

function massRates(scene: Scene, balance: PoseBalance): Rates {
  const into: Rates = new Map()
  bowRates(scene.bow, balance.limbs, into)
  accessoryRates(scene, into)
  rigRates(scene, balance, into)
  const { slope, cant } = poseAngles(balance)
  into.set("pose:slopeDeg", swingingRates(balance, slopeRates(slope, cant).gravity))
  into.set("pose:cantDeg", swingingRates(balance, cantRates(slope, cant).gravity))
  into.set("archer:elbowElevationDeg", NO_MOMENTS)
  return into
}

const poseAngles = ({ pose }: PoseBalance) => ({ slope: pose.slopeDeg * DEGREE, cant: pose.cantDeg * DEGREE })

/** Rates of the bow-to-world rotation, per degree, for the two slots that turn it. */
function rotationRates(balance: PoseBalance): ReadonlyMap<string, Mat3> {
  const { slope, cant } = poseAngles(balance)
  const perDegree = ([x, y, z]: Mat3): Mat3 => [scale(x, DEGREE), scale(y, DEGREE), scale(z, DEGREE)]
  return new Map([
    ["pose:slopeDeg", perDegree(slopeRates(slope, cant).rotation)],
    ["pose:cantDeg", perDegree(cantRates(slope, cant).rotation)],
  ])
}
