import { boxEdgeRates, momentsOf, movedRates } from "../../core/sensitivity"
import { box, pointSolid, type Vec3 } from "../../core/solids"
import { GRAM, metres, MM } from "../assemble"
import { nameCounter } from "../assemble/parts"
import type { Scene } from "../schema"
import { AXES } from "../slots"
import { perGram, perMm, type Rates, UNIT_AXES } from "./rates"

/** Rates of the mass moments by every number of the accessories, per file unit. */
export function accessoryRates(scene: Scene, into: Rates): void {
  const named = nameCounter()
  for (const { name, massG, centreMm, sizeMm } of scene.accessories) {
    const owner = `accessories/${named(name)}`
    const mass = massG * GRAM
    const centre = metres(centreMm)
    const unit = sizeMm === undefined ? pointSolid(1, centre) : box(1, centre, metres(sizeMm))
    const body = momentsOf(pointSolid(mass, centre))
    into.set(`${owner}:massG`, perGram(momentsOf(unit)))
    AXES.forEach((axis, i) => {
      into.set(`${owner}:centreMm.${axis}`, perMm(movedRates(body, UNIT_AXES[i] as Vec3)))
      if (sizeMm !== undefined) into.set(`${owner}:sizeMm.${axis}`, perMm(boxEdgeRates(mass, (sizeMm[i] ?? 0) * MM, i)))
    })
  }
}
