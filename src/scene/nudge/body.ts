import { hingedTensor, tensorOf } from "../../core/nudge"
import { addTensors, compose, scaleTensor, type Tensor, type Vec3 } from "../../core/solids"
import { freeTurnInertia, pendulumOf } from "../../core/swing"
import { evaluate, type Evaluation, type PoseBalance } from "../evaluate"
import { type Result, success } from "../errors"
import type { Scene } from "../schema"

/** A hinge's axis: a swing weight on one turns in the bow's own plane. */
const ACROSS: Vec3 = [0, 0, 1]

/**
 * Turn resistance about the grip to a quick turn, kg·m², bow axes: every swing weight off its stop turns with the bow
 * only as far as its joint drags it. Without one it is the tensor of the pose itself.
 */
export function quickTensor({ aboutOrigin, parts }: PoseBalance): Tensor {
  let tensor = aboutOrigin
  for (const { hung, solids } of parts) {
    if (hung === undefined || hung.rest.onStop) continue
    const { weight, hinge, rest } = hung
    const body = compose(solids)
    const free =
      weight.joint === "hinge"
        ? hingedTensor(body, hinge, ACROSS)
        : tensorOf((axis) => freeTurnInertia(pendulumOf(weight), hinge, rest.direction, axis))
    tensor = addTensors(addTensors(tensor, scaleTensor(body.aboutOrigin, -1)), free)
  }
  return tensor
}

/** The bow just after the shot, SI: let down, without its arrow, level and upright. */
export interface ShotBow {
  readonly evaluation: Evaluation
  /** N·m about the grip; positive lowers the front. */
  readonly noseDown: number
  /** About the grip, swing weights hanging free, kg·m². */
  readonly pitchInertia: number
}

/** What drops when the shot is over and the hand lets the bow turn. */
export function shotBow(scene: Scene): Result<ShotBow> {
  const shot = evaluate({ ...scene, pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
  if (!shot.ok) return shot
  const { now } = shot.value
  return success({ evaluation: shot.value, noseDown: now.noseDown, pitchInertia: quickTensor(now).zz })
}
