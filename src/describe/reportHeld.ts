import type { Evaluation } from "../scene/evaluate"
import type { Report } from "../scene/sweeps"
import { DECIMALS, fixed, pairs, roundToSum, shortened, signed, table } from "./reportTable"
import { forceWords, placed } from "./reportWords"

const { gram, mm, newtonMetre, inertia } = DECIMALS
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

/** Every part's mass, place and moment; the last row is the whole, and both sums add up as shown. */
export function partsSection({ parts, centreMm }: Report): string[] {
  const masses = roundToSum(
    parts.map((part) => part.massG),
    gram,
  )
  const moments = roundToSum(
    parts.map((part) => part.noseDownNm),
    newtonMetre,
  )
  const row = (name: string, mass: number, centre: readonly number[], moment: number) => [
    name,
    fixed(mass, gram),
    ...centre.map((each) => fixed(each, mm)),
    fixed(moment, newtonMetre),
  ]
  return [
    "Parts, each with its centre's place from the grip pivot and its moment about the grip",
    ...table(
      ["part", "mass g", "forward mm", "up mm", "right mm", "nose-down N·m"],
      [
        ...parts.map((part, index) => row(shortened(part.path), masses[index]!, part.centreMm, moments[index]!)),
        row("whole bow", sum(masses), centreMm, sum(moments)),
      ],
    ),
  ]
}

/** The balance point and what gravity does about the grip. */
export function balanceSection(report: Report): string[] {
  const [x, y, z] = report.centreMm
  const place = [placed(x, "forward", "back"), placed(y, "up", "down"), placed(z, "right", "left")]
  return [
    "Balance as held",
    ...pairs([
      ["balance point from the grip pivot", place.join(", ")],
      [
        "its plumb line passes the grip",
        `${placed(report.armForwardMm, "in front", "behind")}, ${placed(report.armSideMm, "to the right", "to the left")}`,
      ],
      ["weight lowers the front by", `${signed(report.noseDownNm, newtonMetre)} N·m`],
      ["weight leans the top right by", `${signed(report.cantRightNm, newtonMetre)} N·m`],
      ["force on the fingers", forceWords(report.holdForceN)],
    ]),
  ]
}

/** Moments of inertia about the grip, beside those of the bow without its rig. */
export function turnSection(report: Report): string[] {
  const { inertiaGrip, stripped, pitchInertiaFree, principal } = report
  const row = (name: string, axis: 0 | 1 | 2, value = inertiaGrip[axis][axis]) => {
    const bare = stripped.inertiaGrip[axis][axis]
    return [name, fixed(value, inertia), fixed(bare, inertia), fixed(value / bare, 2)]
  }
  return [
    "Turn resistance about the grip",
    ...table(
      ["", "this bow kg·m²", "without rig kg·m²", "times"],
      [
        row("pitch (front up and down)", 2),
        ...(pitchInertiaFree === undefined ? [] : [row("pitch, swinging weights free", 2, pitchInertiaFree)]),
        row("yaw (front left and right)", 1),
        row("roll (top left and right)", 0),
      ],
    ),
    `  Without its rig the bow weighs ${fixed(stripped.massG, gram)} g.`,
    `  Principal moments about its own centre: ${principal.map((each) => fixed(each, inertia)).join(", ")} kg·m².`,
  ]
}

/** How each swinging weight hangs at the pose; nothing without one. */
export function swingSection({ now }: Evaluation): string[] {
  const lines = now.parts.flatMap(({ path, hung }) => {
    if (hung === undefined) return []
    const { direction, onStop } = hung.rest
    const degrees = (Math.atan2(Math.hypot(direction[0], direction[2]), -direction[1]) * 180) / Math.PI
    return [
      `  ${path}: ${hangingWords(direction, degrees)}${onStop ? "; it leans on its stop and counts as locked" : ""}.`,
    ]
  })
  return lines.length === 0 ? [] : ["Swinging weights at rest, seen in the bow's own frame", ...lines]
}

/** Below this a lean rounds to nothing as shown, degrees. */
const LEAN_SHOWN = 0.05

function hangingWords(direction: readonly number[], degrees: number): string {
  if (degrees < LEAN_SHOWN) return "straight down the bow"
  const ways = [
    [direction[0]!, "forward", "back"],
    [direction[2]!, "right", "left"],
  ] as const
  const [most] = [...ways].sort(([a], [b]) => Math.abs(b) - Math.abs(a))
  return `${fixed(degrees, 1)}° ${most![0] > 0 ? most![1] : most![2]}`
}
