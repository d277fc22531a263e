import type { Vec3 } from "../../core/solids"
import type { LimbPlace } from "../limbPlace"
import type { Scene } from "../schema"
import { accessoryParts, bowParts } from "./bowParts"
import type { Part } from "./parts"
import { rigParts } from "./rigParts"

export { nockPoint, stringLine } from "./bowParts"
export { type ArmLine, type Axis, GRAM, type HungSwing, metres, MM, type Part, type PartKind } from "./parts"
export { chainParts, elementLengthMm, elementMassG, swingWeight } from "./rigParts"

interface Bare {
  readonly bow: Scene["bow"]
  readonly accessories: Scene["accessories"]
  readonly parts: readonly Part[]
}

const bare = new WeakMap<LimbPlace, Bare>()

/**
 * The bow with nothing on its mounts: riser, limbs, string, arrow once drawn, accessories. The same parts for as long
 * as bow, limbs and accessories are the same objects.
 */
export function bareParts({ bow, accessories }: Pick<Scene, "bow" | "accessories">, limbs: LimbPlace): readonly Part[] {
  const known = bare.get(limbs)
  if (known?.bow === bow && known.accessories === accessories) return known.parts
  const parts = [...bowParts(bow, limbs), ...accessoryParts(accessories)]
  bare.set(limbs, { bow, accessories, parts })
  return parts
}

/** The rig with its swing weights at rest under `gravity` (unit, bow axes). */
export const rig = (scene: Scene, gravity: Vec3): Part[] => rigParts(scene, gravity)
