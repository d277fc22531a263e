import { GRAVITY } from "../core/constants"
import type { Result } from "./errors"
import { success } from "./errors"
import { type Evaluation, type PoseBalance, poseBalance } from "./evaluate"
import { unsolvable } from "./limbErrors"
import { placeLimbs } from "./limbPlace"
import type { Scene } from "./schema"

/** What one change on the way from brace to full draw does, the bow held level and upright. */
export interface ChangeShare {
  /** How far it moves the balance point forward, m. */
  readonly forward: number
  /** By how much it raises the front, N·m about the grip. */
  readonly raising: number
}

/** Why the balance is another one at full draw. `brace` and the four shares add up to `drawn`. */
export interface DrawChange {
  /** Balance point forward and gravity's moment, nose-up positive, at brace. */
  readonly brace: ChangeShare
  readonly limbs: ChangeShare
  readonly string: ChangeShare
  readonly arrow: ChangeShare
  /** The fingers' pull, which moves no mass. */
  readonly pull: ChangeShare
  /** At full draw: balance point forward, and the net lift. */
  readonly drawn: ChangeShare
}

/**
 * Splits the change of balance between brace and full draw without depending on an order. With S = Σ m x and M the
 * whole mass, x₁ - x₀ = (S₀ + ΣΔS)/M₁ - S₀/M₀ = Σ(ΔS - x₀ Δm)/M₁, where only the arrow has a Δm: each part's share is
 * its own term. The moments about the grip, g ΔS, add up as they are.
 */
export function drawChange(scene: Scene, { fullDraw }: Evaluation): Result<DrawChange> {
  const place = placeLimbs(scene.bow, 0)
  if (!place.ok) return unsolvable(place)
  const brace = poseBalance(scene, place.value, { draw: 0, slopeDeg: 0, cantDeg: 0 })
  const share = (path: string): ChangeShare => {
    const before = massAndMoment(brace, path)
    const after = massAndMoment(fullDraw, path)
    const moment = after.moment - before.moment
    return {
      forward: (moment - brace.armForward * (after.mass - before.mass)) / fullDraw.mass,
      raising: -GRAVITY * moment,
    }
  }
  return success({
    brace: { forward: brace.armForward, raising: -brace.noseDown },
    limbs: share("bow/limbs"),
    string: share("bow/string"),
    arrow: share("bow/arrow"),
    pull: { forward: 0, raising: fullDraw.lift },
    drawn: { forward: fullDraw.armForward, raising: fullDraw.netLift },
  })
}

/** kg, and kg·m forward of the grip; nothing for a part that is not there. */
function massAndMoment({ parts }: PoseBalance, path: string): { mass: number; moment: number } {
  const part = parts.find((candidate) => candidate.path === path)
  return part === undefined ? { mass: 0, moment: 0 } : { mass: part.mass, moment: part.mass * part.centre[0] }
}
