import { dampingFor, type Landing, type NudgeTrace } from "../core/nudge"
import type { Tensor, Vec3 } from "../core/solids"
import { type HandHold, type Motion, motions } from "../scene/nudge"
import { csvText } from "./csv"
import { fixed, show, type UnitChoice } from "./format"
import { nudgeWords } from "./nudgeWords"

const DEGREE = Math.PI / 180
/** A nudge is thousandths of a degree to degrees, a drop degrees. */
const DECIMALS = 3
export const DROP_DECIMALS = 1

/** "0.043° up", "0.120° left", "0.000°": a turn, rad, and its way. */
export function turnText(angle: number, motion: Motion, decimals = DECIMALS): string {
  const size = fixed(Math.abs(angle / DEGREE), decimals)
  if (Number(size) === 0) return `${size}°`
  return `${size}° ${nudgeWords.sides[motion][angle > 0 ? 0 : 1]}`
}

/** "16 ms", for what happens in a second. */
export const momentText = (seconds: number): string => `${fixed(seconds * 1e3, 0)}\u00a0ms`

/** "16 ms: this bow 0.043° up; held 0.051° up.", one motion of each bow. */
export function turnPointText(
  seconds: number,
  motion: Motion,
  bows: readonly (readonly [name: string, angles: Vec3])[],
  decimals?: number,
): string {
  const axis = motions.indexOf(motion)
  const each = bows.map(([name, angles]) => `${name} ${turnText(angles[axis]!, motion, decimals)}`)
  return `${momentText(seconds)}: ${each.join("; ")}.`
}

/** "16 ms: this bow roll 0.010° right, yaw 0.000°; held …": all motions but one. */
export function othersPointText(
  seconds: number,
  motion: Motion,
  bows: readonly (readonly [name: string, angles: Vec3])[],
): string {
  const each = bows.map(([name, angles]) => {
    const turns = motions.flatMap((other, axis) =>
      other === motion ? [] : [`${nudgeWords.motions[other].toLowerCase()} ${turnText(angles[axis]!, other)}`],
    )
    return `${name} ${turns.join(", ")}`
  })
  return `${momentText(seconds)}: ${each.join("; ")}.`
}

/** "106 mm left, 3 mm high", "on the aim": in whole millimetres or tenths of an inch. */
export function landingText({ right, up }: Landing, units: UnitChoice): string {
  const part = (metres: number, plus: string, minus: string): string[] => {
    const { text, unit } = show(Math.abs(metres) * 1e3, "length", units, -1)
    return Number(text) === 0 ? [] : [`${text}\u00a0${unit} ${metres > 0 ? plus : minus}`]
  }
  const parts = [...part(right, "right", "left"), ...part(up, "high", "low")]
  return parts.length === 0 ? "on the aim" : parts.join(", ")
}

/** Why a hold by the string is not offered; `names` are the setups that have none. */
export const noStringText = (names: readonly string[]): string =>
  `“${nudgeWords.holds.string}” is not offered: ${names.map((name) => `“${name}”`).join(" and ")} ${
    names.length > 1 ? "are compounds" : "is a compound"
  }, whose cables are not modelled, so the tension of the string is not known.`

/** "231 N·m/rad against pitch and yaw, none against roll; damping 1.00 N·m·s/rad, 7 % of critical in pitch." */
export function holdText({ pitch, yaw, roll, damping }: HandHold, tensor: Tensor): string {
  const of = (value: number) => (value === 0 ? "none" : `${fixed(value, value < 10 ? 1 : 0)}\u00a0N·m/rad`)
  const against =
    pitch === yaw ? [`${of(pitch)} against pitch and yaw`] : [`${of(pitch)} against pitch`, `${of(yaw)} against yaw`]
  const stiffness = [...against, `${of(roll)} against roll`].join(", ")
  const critical = dampingFor(1, pitch, tensor.zz)
  const share =
    critical > 0 && damping > 0 ? `, ${fixed((100 * damping) / critical, 0)}\u00a0% of critical in pitch` : ""
  return `Stiffness ${stiffness}; damping ${damping === 0 ? "none" : `${fixed(damping, 2)}\u00a0N·m·s/rad`}${share}.`
}

/** "Drawn turning 50 times as far as it does, both bows alike." */
export const enlargedText = (factor: number, bows: number): string =>
  factor === 1
    ? "Drawn as far as it turns."
    : `Drawn turning ${factor} times as far as it does${bows > 1 ? ", both bows alike" : ""}.`

/** What of a face is drawn, when the middle of it is seen `zoom` times nearer. */
export const faceText = (centimetres: number, zoom: number): string =>
  zoom === 1
    ? `Ten rings on ${centimetres}\u00a0cm, the size that is usual at this distance.`
    : `The middle of a face of ${centimetres}\u00a0cm, the size that is usual at this distance, seen ${zoom} times nearer.`

/** Traces as a table for a spreadsheet, degrees; each bow by its name. */
export function nudgeCsv(bows: readonly { readonly name: string; readonly trace: NudgeTrace }[]): string {
  const first = bows[0]?.trace
  if (first === undefined) return ""
  return csvText([
    { heading: "time s", values: first.angles.map((_, index) => Number((index * first.step).toFixed(6))) },
    ...bows.flatMap(({ name, trace }) =>
      motions.map((motion, axis) => ({
        heading: `${name} ${motion} deg`,
        values: trace.angles.map((angles) => angles[axis]! / DEGREE),
      })),
    ),
  ])
}
