import { along, cross, dot, subtract, type Vec3 } from "../../core/solids"

/** The way a camera looks at the bow, without saying from how far. World axes. */
export interface ViewAxes {
  /** Unit, from the target to the camera. */
  readonly toward: Vec3
  /** Unit, right and up in the picture. */
  readonly right: Vec3
  readonly up: Vec3
}

/** Part of the picture to keep the bow in, as fractions of its width and height taken off at each edge. */
export interface Insets {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export interface Fit {
  /** Point in the middle of the picture, world axes, m. */
  readonly target: Vec3
  /** From the target to the camera, m. */
  readonly distance: number
}

/** Nearest a camera comes: nothing on a bow is looked at from nearer, m. */
const NEAREST = 0.3
const PASSES = 12

/**
 * Axes of a view from an azimuth (0 from the archer's right, growing toward the target's end) and an elevation above
 * level, rad. Defined straight above and below too, where the azimuth says what is right.
 */
export function viewAxes(azimuth: number, elevation: number): ViewAxes {
  const level = Math.cos(elevation)
  const toward: Vec3 = [level * Math.sin(azimuth), Math.sin(elevation), level * Math.cos(azimuth)]
  const right: Vec3 = [Math.cos(azimuth), 0, 0 - Math.sin(azimuth)]
  return { toward, right, up: cross(toward, right) }
}

/**
 * Where a perspective camera must stand so that all points fall inside the insets, and no further away. `halfHeight` is
 * tan(half the vertical field of view), `aspect` width over height. A point at (u, v, w) from the target along
 * right, up and toward is inside where |u| ≤ (D - w)·tan; the target is moved until both sides of each direction
 * are equally full, and D is the largest that any point asks for. No points: the origin from the nearest distance.
 */
export function fitView(
  points: readonly Vec3[],
  axes: ViewAxes,
  halfHeight: number,
  aspect: number,
  insets: Insets,
): Fit {
  const halfWidth = halfHeight * aspect
  // Slopes, from the camera, of the four edges of the usable part.
  const west = halfWidth * (2 * insets.left - 1)
  const east = halfWidth * (1 - 2 * insets.right)
  const south = halfHeight * (2 * insets.bottom - 1)
  const north = halfHeight * (1 - 2 * insets.top)
  const places = points.map((p) => [dot(p, axes.right), dot(p, axes.up), dot(p, axes.toward)] as const)
  if (places.length === 0) return { target: [0, 0, 0], distance: NEAREST }
  const w0 = middle(places.map(([, , w]) => w))
  let [u0, v0, distance] = [0, 0, NEAREST]
  for (let pass = 0; pass < PASSES; pass++) {
    const across = squeeze(
      places.map(([u, , w]) => [u, w - w0]),
      west,
      east,
      distance,
    )
    const along = squeeze(
      places.map(([, v, w]) => [v, w - w0]),
      south,
      north,
      distance,
    )
    const next = Math.max(NEAREST, across.distance, along.distance)
    ;[u0, v0] = [across.middle, along.middle]
    if (Math.abs(next - distance) < 1e-9) break
    distance = next
  }
  const target: Vec3 = [0, 1, 2].map(
    (k) => axes.right[k]! * u0 + axes.up[k]! * v0 + axes.toward[k]! * w0,
  ) as unknown as Vec3
  return { target, distance }
}

/**
 * One direction: the camera's offset and least distance such that low·(D - w) ≤ place - offset ≤ high·(D - w) for
 * all. For the outermost pair i, j: D ≥ (pᵢ - pⱼ + high·wᵢ - low·wⱼ)/(high - low); the offset at distance
 * `distance` halves what is left.
 */
function squeeze(places: readonly (readonly [number, number])[], low: number, high: number, distance: number) {
  const highest = Math.max(...places.map(([p, w]) => p + high * w))
  const lowest = Math.min(...places.map(([p, w]) => p + low * w))
  const least = (highest - lowest) / (high - low)
  const D = Math.max(least, distance)
  const from = highest - high * D
  const to = lowest - low * D
  return { distance: least, middle: (from + to) / 2 }
}

const middle = (values: readonly number[]): number => (Math.min(...values) + Math.max(...values)) / 2

/** Whether all points fall inside the picture's edges for a camera at `eye` looking at `target` along `axes`. */
export function allInside(
  points: readonly Vec3[],
  eye: Vec3,
  axes: ViewAxes,
  halfHeight: number,
  aspect: number,
): boolean {
  return points.every((point) => {
    const r = subtract(point, eye)
    const depth = 0 - dot(r, axes.toward)
    return (
      depth > 0 &&
      Math.abs(dot(r, axes.right)) <= depth * halfHeight * aspect &&
      Math.abs(dot(r, axes.up)) <= depth * halfHeight
    )
  })
}

/** Where the camera stands, m. */
export const eyeOf = (fit: Fit, { toward }: ViewAxes): Vec3 => along(fit.target, toward, fit.distance)
