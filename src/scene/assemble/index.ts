import type { Vec3 } from "../../core/solids"
import type { LimbPlace } from "../limbPlace"
import type { Scene } from "../schema"
import { accessoryParts, bowParts } from "./bowParts"
import type { Part } from "./parts"
import { rigParts } from "./rigParts"

export { nockPoint, stringLine } from "./bowParts"
export { type ArmLine, type Axis, GRAM, type HungSwing, metres, MM, type Part, type PartKind } from "./parts"
export { chainParts, elementLengthMm, elementMassG, swingWeight } from "./rigParts"

/** The bow with nothing on its mounts: riser, limbs, string, arrow once drawn, accessories. */
export const bareParts = (scene: Scene, limbs: LimbPlace): Part[] => [
  ...bowParts(scene.bow, limbs),
  ...accessoryParts(scene),
]

/** The rig with its swing weights at rest under `gravity` (unit, bow axes). */
export const rig = (scene: Scene, gravity: Vec3): Part[] => rigParts(scene, gravity)
