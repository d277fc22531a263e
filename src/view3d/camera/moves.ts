import { along } from "../../core/solids"
import { viewAxes } from "./fit"
import { HALF_HEIGHT, type View } from "./view"

/** Nearest and furthest the camera may stand from what it looks at, m. */
export const NEAREST = 0.25
export const FURTHEST = 12
/** A hair short of straight up or down, where left and right would be undefined, rad. */
const HIGHEST = Math.PI / 2 - 1e-3

/** The view from further around (`azimuth`, rad) and further up (`elevation`, rad), never over the top. */
export const turned = (view: View, azimuth: number, elevation: number): View => ({
  ...view,
  azimuth: view.azimuth + azimuth,
  elevation: Math.min(HIGHEST, Math.max(-HIGHEST, view.elevation + elevation)),
})

/** The view with the point looked at moved right and up in the picture, m. */
export function shifted(view: View, rightward: number, upward: number): View {
  const { right, up } = viewAxes(view.azimuth, view.elevation)
  return { ...view, target: along(along(view.target, right, rightward), up, upward) }
}

/**
 * The view from `factor` times the distance. What is seen at (`rightward`, `upward`) from the middle, m at the target's
 * depth, stays where it is in the picture.
 */
export function neared(view: View, factor: number, rightward = 0, upward = 0): View {
  const distance = Math.min(FURTHEST, Math.max(NEAREST, view.distance * factor))
  const part = 1 - distance / view.distance
  return { ...shifted(view, rightward * part, upward * part), distance }
}

/** Metres at the target's depth that one px spans in a picture `height` px high. */
export const metresPerPixel = (view: View, height: number): number =>
  (2 * view.distance * HALF_HEIGHT) / Math.max(1, height)
