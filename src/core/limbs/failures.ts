import type { LimbFailure, LimbFailureReason, LimbSetup } from "./types"

const mm = (metres: number): string => `${(metres * 1000).toFixed(0)} mm`
/** Toward the side that is known to work, so that the length named does work. */
const mmDown = (metres: number): string => `${Math.floor(metres * 1000)} mm`

const failure = (
  reason: LimbFailureReason,
  quantity: LimbFailure["quantity"],
  message: string,
  nearest?: number,
): LimbFailure =>
  nearest === undefined ? { ok: false, reason, quantity, message } : { ok: false, reason, quantity, message, nearest }

export const notALimb = (quantity: LimbFailure["quantity"], message: string): LimbFailure =>
  failure("not-a-limb", quantity, message)

export function braceUnreachable({ limb, braceHeight }: LimbSetup, nearest: number | undefined): LimbFailure {
  const why =
    -braceHeight >= limb.rootForward
      ? `a string ${mm(braceHeight)} behind the grip would lie in front of the limb's root`
      : `this limb has no strung shape with its string ${mm(braceHeight)} behind the grip`
  const advice =
    nearest === undefined ? "no brace height near it works either" : `the nearest that works is ${mm(nearest)}`
  return failure("brace-unreachable", "braceHeight", `The brace height cannot be reached: ${why}; ${advice}.`, nearest)
}

export const drawBelowBrace = (braceHeight: number, draw: number): LimbFailure =>
  failure(
    "draw-below-brace",
    "drawLength",
    `The draw of ${mm(draw)} is not beyond the brace height of ${mm(braceHeight)}, where the string rests.`,
    braceHeight,
  )

const drawable = (nearest: number | undefined): string =>
  nearest === undefined ? "it cannot be drawn at all" : `it can be drawn to ${mmDown(nearest)}`

export function drawPastString(draw: number, straight: number, nearest: number | undefined): LimbFailure {
  const why = `limb and string pulled into one straight line reach ${mm(straight)}`
  const message = `The draw of ${mm(draw)} is more than the string allows: ${why}; ${drawable(nearest)}.`
  return failure("draw-past-string", "drawLength", message, nearest)
}

export function limbGivesWay(draw: number, nearest: number | undefined): LimbFailure {
  const why = "the limb would give way, snapping into another shape or straightening out"
  return failure(
    "limb-gives-way",
    "drawLength",
    `On the way to a draw of ${mm(draw)} ${why}; ${drawable(nearest)}.`,
    nearest,
  )
}

export const notConverged = (draw: number): LimbFailure =>
  failure("no-convergence", "drawLength", `The limb's shape at a draw of ${mm(draw)} could not be found.`)
