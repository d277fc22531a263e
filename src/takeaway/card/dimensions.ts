import { along, distance, type Vec3 } from "../../core/solids"
import type { UnitChoice } from "../../describe/format"
import { short } from "../../describe/placeWords"
import type { Pane } from "../../picture/handle"
import { nockPoint } from "../../scene/assemble"
import { chainsOf } from "../../scene/address"
import type { Evaluation, WeighedPart } from "../../scene/evaluate"
import { setupCard } from "../../words/setupCard"

/** A length to be drawn with its number. */
export interface Dimension {
  readonly key: string
  readonly pane: Pane
  /** Bow axes, m. */
  readonly from: Vec3
  readonly to: Vec3
  /** To which side of the way from `from` to `to` its line stands on the page: 1 is left of it, -1 right of it. */
  readonly side: 1 | -1
  readonly text: string
}

/** From where each chain begins to its far end, and the brace height. */
export function dimensionsOf({ scene, now }: Evaluation, units: UnitChoice): readonly Dimension[] {
  const chains = chainsOf(scene).flatMap(({ path, arm, mount }): Dimension[] => {
    const parts = now.parts.filter((part) => part.axis !== undefined && chainOf(part.path) === path)
    const [first, last] = [parts[0]?.axis, parts.at(-1)?.axis]
    if (first === undefined || last === undefined) return []
    const to = along(last.start, last.direction, last.length)
    const length = distance(first.start, to)
    if (length < LEAST) return []
    const text = short(length * 1e3, "length", units)
    const side = arm !== undefined ? (arm.side === "left" ? -1 : 1) : mount === "lower" ? -1 : 1
    return [{ key: path, pane: arm === undefined ? "side" : "top", from: first.start, to, side, text }]
  })
  const nock = nockPoint(scene.bow, now.limbs)
  const brace: Dimension = {
    key: "brace",
    pane: "side",
    from: nock,
    to: [0, nock[1], 0],
    side: 1,
    text: setupCard.brace(short(scene.bow.braceHeightMm, "length", units)),
  }
  return [...chains, brace]
}

/** Shorter than this a length has no room between its ticks, m. */
const LEAST = 0.03

/** `front/vbar/left/rod` is on `front/vbar/left`. */
const chainOf = (path: WeighedPart["path"]): string => path.slice(0, Math.max(0, path.lastIndexOf("/")))
