import { ROUND } from "../rounding"
import type { LimbFailure, LimbFailureReason, LimbSetup, SaidLength } from "./types"

type Words = LimbFailure["words"]

const mm = (metres: number): SaidLength => ({ metres, round: "nearest" })
/** A length that works where `asked` does not, cut away from that, so that the length named does work. */
const mmWorking = (metres: number, asked: number): SaidLength => ({ metres, round: metres < asked ? "down" : "up" })

/** A sentence in its parts, written as a template with lengths and parts of sentences in it. */
const words = (texts: readonly string[], ...parts: readonly (SaidLength | Words)[]): Words =>
  texts.flatMap((text, index) => {
    const part = parts[index] ?? []
    return [text, ...("metres" in part ? [part] : part)]
  })

const inMillimetres = (part: string | SaidLength): string => {
  if (typeof part === "string") return part
  return `${ROUND[part.round](part.metres * 1000)} mm`
}

const failure = (
  reason: LimbFailureReason,
  quantity: LimbFailure["quantity"],
  words: Words,
  nearest?: number,
): LimbFailure => {
  const found = { ok: false, reason, quantity, message: words.map(inMillimetres).join(""), words } as const
  return nearest === undefined ? found : { ...found, nearest }
}

export const notALimb = (quantity: LimbFailure["quantity"], message: string): LimbFailure =>
  failure("not-a-limb", quantity, [message])

export function braceUnreachable({ limb, braceHeight }: LimbSetup, nearest: number | undefined): LimbFailure {
  const why =
    -braceHeight >= limb.rootForward
      ? words`a string ${mm(braceHeight)} behind the grip would lie in front of the limb's root`
      : words`this limb has no strung shape with its string ${mm(braceHeight)} behind the grip`
  const advice =
    nearest === undefined
      ? words`no brace height near it works either`
      : words`the nearest that works is ${mmWorking(nearest, braceHeight)}`
  return failure(
    "brace-unreachable",
    "braceHeight",
    words`The brace height cannot be reached: ${why}; ${advice}.`,
    nearest,
  )
}

export const drawBelowBrace = (braceHeight: number, draw: number): LimbFailure =>
  failure(
    "draw-below-brace",
    "drawLength",
    words`The draw of ${mm(draw)} is not beyond the brace height of ${mm(braceHeight)}, where the string rests.`,
    braceHeight,
  )

const drawable = (draw: number, nearest: number | undefined): Words =>
  nearest === undefined ? words`it cannot be drawn at all` : words`it can be drawn to ${mmWorking(nearest, draw)}`

export function drawPastString(draw: number, straight: number, nearest: number | undefined): LimbFailure {
  const why = words`limb and string pulled into one straight line reach ${mm(straight)}`
  const said = words`The draw of ${mm(draw)} is more than the string allows: ${why}; ${drawable(draw, nearest)}.`
  return failure("draw-past-string", "drawLength", said, nearest)
}

export function limbGivesWay(draw: number, nearest: number | undefined): LimbFailure {
  const why = words`the limb would give way, snapping into another shape or straightening out`
  const said = words`On the way to a draw of ${mm(draw)} ${why}; ${drawable(draw, nearest)}.`
  return failure("limb-gives-way", "drawLength", said, nearest)
}

export const notConverged = (draw: number): LimbFailure =>
  failure("no-convergence", "drawLength", words`The limb's shape at a draw of ${mm(draw)} could not be found.`)
