import { along, midpoint, type Vec3 } from "../../core/solids"
import { compoundLimb } from "../../picture/outline/limbs"
import { riserSections } from "../../picture/outline/riser"
import { MM, nockPoint, stringLine } from "../../scene/assemble"
import type { PoseBalance, WeighedPart } from "../../scene/evaluate"
import type { Motion } from "../../scene/nudge"
import type { Scene } from "../../scene/schema"

/** A line of a little picture: through points in bow axes, as wide as what it stands for, m. */
export interface BowLine {
  readonly look: "riser" | "limb" | "string" | "arrow" | "rod" | "weight"
  readonly points: readonly Vec3[]
  readonly width: number
}

/** One in so many of the riser's sections is enough for a thick line. */
const EVERY = 6

/** A bow as a few thick lines: enough to see which rig it is and how it turns. */
export function bowLines(scene: Scene, { limbs, parts }: PoseBalance): BowLine[] {
  const { bow } = scene
  const middle = riserSections(scene)
    .filter((_, index, all) => index % EVERY === 0 || index === all.length - 1)
    .map(({ y, back, front, left, right }): Vec3 => [(back + front) / 2, y, (left + right) / 2])
  const curves = limbs.curves ?? [compoundLimb(bow, limbs, 1).curve, compoundLimb(bow, limbs, -1).curve]
  const lines: BowLine[] = [
    ...curves.map((points): BowLine => ({ look: "limb", points, width: 0.016 })),
    { look: "riser", points: middle, width: 0.034 },
    { look: "string", points: stringLine(bow, limbs), width: 0.006 },
  ]
  if (limbs.drawFraction > 0) {
    const nock = nockPoint(bow, limbs)
    lines.push({ look: "arrow", points: [nock, along(nock, [1, 0, 0], bow.arrow.lengthMm * MM)], width: 0.007 })
  }
  return [...lines, ...parts.flatMap(partLines)]
}

function partLines({ axis, arms, hung, kind }: WeighedPart): BowLine[] {
  if (hung !== undefined) {
    const { weight, hinge, rest } = hung
    const at = (distance: number) => along(hinge, rest.direction, distance)
    return [
      { look: "rod", points: [hinge, at(weight.stemLength)], width: 0.008 },
      {
        look: "weight",
        points: [at(weight.stemLength - weight.bobLength / 2), at(weight.stemLength + weight.bobLength / 2)],
        width: 2 * weight.bobRadius,
      },
    ]
  }
  if (axis === undefined || axis.length === 0) return []
  const end = along(axis.start, axis.direction, axis.length)
  const body: BowLine = {
    look: kind === "weights" ? "weight" : "rod",
    points: [axis.start, end],
    width: 2 * axis.outerRadius,
  }
  const from = midpoint(axis.start, end)
  const stubs = Object.values(arms ?? {}).map(
    ({ start }): BowLine => ({ look: "rod", points: [from, start], width: axis.outerRadius }),
  )
  return [body, ...stubs]
}

/** Bow axes to a picture's, m, y down as in SVG: from the archer's right, from above, and as the archer sees it. */
export const seen: Readonly<Record<Motion, (point: Vec3) => readonly [number, number]>> = {
  pitch: ([x, y]) => [x, 0 - y],
  yaw: ([x, , z]) => [x, z],
  roll: ([, y, z]) => [z, 0 - y],
}

/** Degrees that a picture turns, clockwise, for a turn of the bow, rad: front up and front left go the other way. */
export const clockwise = (motion: Motion, angle: number): number =>
  ((motion === "roll" ? angle : 0 - angle) * 180) / Math.PI

/** Largest turn that a picture shows, rad. */
const SHOWN = (25 * Math.PI) / 180

/** How many times as far as a turn of `largest` rad pictures turn, so that it is plain and none turns over: 1, 2, 5, 10 … */
export function enlargement(largest: number): number {
  let factor = 1
  for (const next of [2, 5, 10, 20, 50, 100, 200, 500, 1000]) if (next * largest <= SHOWN) factor = next
  return largest > 0 ? factor : 1
}

export interface Box {
  readonly left: number
  readonly top: number
  readonly width: number
  readonly height: number
}

const MARGIN = 0.05

/** What a picture needs room for, m: lines as they are and turned by `turn` rad either way about the grip. */
export function room(lines: readonly BowLine[], motion: Motion, turn: number): Box {
  const points = lines.flatMap((line) => line.points.map(seen[motion]))
  const turned = [-turn, 0, turn].flatMap((angle) => {
    const [cosine, sine] = [Math.cos(angle), Math.sin(angle)]
    return points.map(([x, y]) => [x * cosine - y * sine, x * sine + y * cosine] as const)
  })
  const [xs, ys] = [turned.map(([x]) => x), turned.map(([, y]) => y)]
  const [left, top] = [Math.min(...xs) - MARGIN, Math.min(...ys) - MARGIN]
  return { left, top, width: Math.max(...xs) + MARGIN - left, height: Math.max(...ys) + MARGIN - top }
}
