import { dampingFor, type Landing, type NudgeTrace } from "../core/nudge"
import type { Tensor, Vec3 } from "../core/solids"
import { type HandHold, type Motion, motions } from "../scene/nudge"
import { nudge as words } from "../words/nudge"
import { csvText } from "./csv"
import { fixed, show, type UnitChoice, withUnit } from "./format"

const DEGREE = Math.PI / 180
/** A nudge is thousandths of a degree to degrees, a drop degrees. */
const DECIMALS = 3
export const DROP_DECIMALS = 1

/** "0.043° up", "0.120° left", "0.000°": a turn, rad, and its way. */
export function turnText(angle: number, motion: Motion, decimals = DECIMALS): string {
  const size = `${fixed(Math.abs(angle / DEGREE), decimals)}°`
  if (saysNothing(size)) return size
  return `${size} ${words.ways[motion][angle > 0 ? "plus" : "minus"]}`
}

/** Whether a number is shown as zero. */
const saysNothing = (shown: string): boolean => !/[1-9]/.test(shown)

/** "16 ms", for what happens in a second. */
export const momentText = (seconds: number): string => withUnit(fixed(seconds * 1e3, 0), "ms")

/** "16 ms: this bow 0.043° up; held 0.051° up.", one motion of each bow. */
export function turnPointText(
  seconds: number,
  motion: Motion,
  bows: readonly (readonly [name: string, angles: Vec3])[],
  decimals?: number,
): string {
  const axis = motions.indexOf(motion)
  return pointText(
    seconds,
    bows.map(([name, angles]) => words.bowTurns(name, turnText(angles[axis]!, motion, decimals))),
  )
}

/** "16 ms: this bow roll 0.010° right, yaw 0.000°; held …": all motions but one. */
export function othersPointText(
  seconds: number,
  motion: Motion,
  bows: readonly (readonly [name: string, angles: Vec3])[],
): string {
  const each = bows.map(([name, angles]) => {
    const turns = motions.flatMap((other, axis) =>
      other === motion ? [] : [`${words.motionsWithin[other]} ${turnText(angles[axis]!, other)}`],
    )
    return words.bowTurns(name, turns.join(", "))
  })
  return pointText(seconds, each)
}

const pointText = (seconds: number, bows: readonly string[]): string =>
  words.at(
    momentText(seconds),
    bows.reduce((one, other) => words.bothBows(one, other)),
  )

/** "106 mm left, 3 mm high", "on the aim": in whole millimetres or tenths of an inch. */
export function landingText({ right, up }: Landing, units: UnitChoice): string {
  type Way = (far: string) => string
  const part = (metres: number, plus: Way, minus: Way): string[] => {
    const { text, unit } = show(Math.abs(metres) * 1e3, "length", units, -1)
    return saysNothing(text) ? [] : [(metres > 0 ? plus : minus)(withUnit(text, unit))]
  }
  const parts = [...part(right, words.right, words.left), ...part(up, words.high, words.low)]
  return parts.length === 0 ? words.onAim : parts.join(", ")
}

/** Why a hold by the string is not offered; `names` are the one or two setups that have none. */
export function noStringText([one = "", other]: readonly string[]): string {
  return other === undefined ? words.hold.noString(one) : words.hold.noStrings(one, other)
}

/** "231 N·m/rad against pitch and yaw, none against roll; damping 1.00 N·m·s/rad, 7 % of critical in pitch." */
export function holdText({ pitch, yaw, roll, damping }: HandHold, tensor: Tensor): string {
  const { none, againstBoth, againstPitch, againstYaw, againstRoll, ofCritical, sentence } = words.hold
  const of = (value: number) => (value === 0 ? none : withUnit(fixed(value, value < 10 ? 1 : 0), "N·m/rad"))
  const against = pitch === yaw ? [againstBoth(of(pitch))] : [againstPitch(of(pitch)), againstYaw(of(yaw))]
  const damped = damping === 0 ? none : withUnit(fixed(damping, 2), "N·m·s/rad")
  const critical = dampingFor(1, pitch, tensor.zz)
  const share = critical > 0 && damping > 0 ? withUnit(fixed((100 * damping) / critical, 0), "%") : null
  return sentence([...against, againstRoll(of(roll))].join(", "), share === null ? damped : ofCritical(damped, share))
}

/** "Drawn turning 50 times as far as it does, both bows alike." */
export function enlargedText(factor: number, bows: number): string {
  if (factor === 1) return words.trueTurn
  return bows > 1 ? words.bothEnlarged(factor) : words.enlarged(factor)
}

/** What of a face is drawn, when the middle of it is seen `zoom` times nearer. */
export function faceText(centimetres: number, zoom: number): string {
  const across = withUnit(String(centimetres), "cm")
  return zoom === 1 ? words.face(across) : words.nearFace(across, zoom)
}

/** Traces as a table for a spreadsheet, degrees; each bow by its name. */
export function nudgeCsv(bows: readonly { readonly name: string; readonly trace: NudgeTrace }[]): string {
  const first = bows[0]?.trace
  if (first === undefined) return ""
  return csvText([
    { heading: words.csv.time, values: first.angles.map((_, index) => Number((index * first.step).toFixed(6))) },
    ...bows.flatMap(({ name, trace }) =>
      motions.map((motion, axis) => ({
        heading: words.csv.turn(name, words.motionsWithin[motion]),
        values: trace.angles.map((angles) => angles[axis]! / DEGREE),
      })),
    ),
  ])
}
