import type { Vec3 } from "../core/solids"
import type { ScreenPoint } from "../picture/drag"
import { convexOutline, pathThrough } from "./outline"

/** One path of a drawing; `look` is the class that says how it is filled and stroked. */
export interface Shape {
  readonly look: string
  readonly path: string
}

/** From bow axes, m, to the page, px. */
export type Draw = (point: Vec3) => ScreenPoint

/** The outline of a body that is convex, from points of its surface that hold all its corners. */
export const solid = (look: string, points: readonly Vec3[], draw: Draw): Shape => ({
  look,
  path: pathThrough(convexOutline(points.map(draw)), true),
})
