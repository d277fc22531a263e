import { GRIP_REACH, SHIFT_DRAWN } from "../describe/drawnWords"
import { along, multiply, type Vec3 } from "../core/solids"
import type { DrawnBalance } from "../core/balance"
import type { PoseBalance } from "../scene/evaluate"

/** Length of both arrows, m: they stand for the same weight. */
export const ARROW = 0.2
/** A balanced-forward place further from the grip than this, m, is drawn there and pointed past. */
const FURTHEST = 0.6

/** Where the balance of a drawn bow is drawn, world axes, m. */
export interface DrawnPlaces {
  readonly balance: Vec3
  /** Where the balance point would have to be, on its own height. */
  readonly balanced: Vec3
  /** That place is further off than it is drawn. */
  readonly beyond: boolean
  /** Ends of the arrows: of the weight, down from the balance point, and of the lift, up from the balanced place. */
  readonly weightEnd: Vec3
  readonly liftEnd: Vec3
  /** Where the hand's pressure goes, drawn larger than it is; null where nothing holds. */
  readonly pressure: Vec3 | null
}

export function drawnPlaces({ centre, rotation }: PoseBalance, drawn: DrawnBalance): DrawnPlaces {
  const balance = multiply(rotation, centre)
  const forward = Math.max(-FURTHEST, Math.min(FURTHEST, drawn.balancedForward))
  const balanced: Vec3 = [forward, balance[1], balance[2]]
  const shift = SHIFT_DRAWN * Math.max(-GRIP_REACH, Math.min(GRIP_REACH, drawn.gripShift))
  return {
    balance,
    balanced,
    beyond: forward !== drawn.balancedForward,
    weightEnd: along(balance, [0, -1, 0], ARROW),
    liftEnd: along(balanced, [0, 1, 0], ARROW),
    pressure: Number.isFinite(shift) ? multiply(rotation, [0, shift, 0]) : null,
  }
}
