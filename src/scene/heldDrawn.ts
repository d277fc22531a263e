import { type DrawnBalance, drawnBalance } from "../core/balance"
import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import { MM } from "./assemble"
import type { Evaluation } from "./evaluate"

/**
 * The balance of a bow that is being drawn, as it is held now: at this draw, slope and cant. Null at brace, where
 * nothing pulls. Moments are about the level axis across the aim, so the lift of a canted bow counts with the cosine of
 * its cant: level, upright and at full draw these are the figures of `evaluation.fullDraw`.
 */
export function heldDrawn({ scene, now }: Pick<Evaluation, "scene" | "now">): DrawnBalance | null {
  if (!(now.limbs.drawFraction > 0)) return null
  return drawnBalance({
    holdForce: now.limbs.holdForce * Math.cos(now.pose.cantDeg * DEGREE),
    nockHeight: scene.bow.nockHeightMm * MM,
    drawLength: now.limbs.draw,
    elbowElevation: scene.archer.elbowElevationDeg * DEGREE,
    mass: now.mass,
    noseDown: now.noseDown,
  })
}
