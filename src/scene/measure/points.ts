import { along, type Vec3 } from "../../core/solids"
import { nockPoint } from "../assemble"
import type { Evaluation } from "../evaluate"
import { placeLimbs } from "../limbPlace"
import { chainsOf } from "../address"
import type { Scene } from "../schema"

/** A place on the bow that a hook, a finger or a cord can find again. */
export interface NamedPoint {
  /** For a list in a page; unique in a scene. */
  readonly key: string
  /** What it is, for the words. */
  readonly what: "grip" | "nock" | "string-top" | "string-bottom" | "mount" | "end" | "accessory"
  /** The part's path, where it is one of a part's. */
  readonly path: string
  /** File units, bow axes. */
  readonly atMm: Vec3
}

/** Every such place of the bow at brace, as it is rigged now. None of the string's where the limbs cannot be strung. */
export function namedPoints(scene: Scene, { now }: Pick<Evaluation, "now">): NamedPoint[] {
  const points: NamedPoint[] = [{ key: "grip", what: "grip", path: "bow", atMm: [0, 0, 0] }]
  const brace = placeLimbs(scene.bow, 0)
  if (brace.ok) {
    const [top, bottom] = brace.value.stringEnds
    points.push(
      point("nock", "nock", "bow/string", nockPoint(scene.bow, brace.value)),
      point("string-top", "string-top", "bow/string", top),
      point("string-bottom", "string-bottom", "bow/string", bottom),
    )
  }
  for (const [name, mount] of Object.entries(scene.mounts)) {
    if (mount !== undefined)
      points.push({ key: `mount/${name}`, what: "mount", path: `mounts/${name}`, atMm: [...mount.atMm] })
  }
  for (const { path } of chainsOf(scene)) {
    const pieces = now.parts.filter((part) => part.axis !== undefined && chainOf(part.path) === path)
    const last = pieces.at(-1)
    if (last?.axis === undefined) continue
    const { start, direction, length } = last.axis
    points.push(point(`end/${path}`, "end", last.path, along(start, direction, length)))
  }
  for (const part of now.parts) {
    if (part.kind === "accessory") points.push(point(part.path, "accessory", part.path, part.centre))
  }
  return points
}

const chainOf = (path: string): string => path.split("/").slice(0, -1).join("/")

const point = (key: string, what: NamedPoint["what"], path: string, at: Vec3): NamedPoint => ({
  key,
  what,
  path,
  atMm: [round(at[0]), round(at[1]), round(at[2])],
})

/** To a tenth of a millimetre: nobody hooks closer, and the file stays readable. */
const round = (metres: number): number => Math.round(metres * 1e4) / 10
