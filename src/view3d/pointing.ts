import { type Camera, type Object3D, Raycaster, Vector2, type Vector3 } from "three"

const ray = new Raycaster()
const place = new Vector2()

/** Directions tried about a point that hits nothing: rods and strings are thin. */
const AROUND = Array.from(
  { length: 8 },
  (_, index) => [Math.cos((index * Math.PI) / 4), Math.sin((index * Math.PI) / 4)] as const,
)

export interface Hit {
  readonly path: string
  /** Where on its surface, world axes. */
  readonly at: Vector3
}

/**
 * The part under the point (x, y), CSS px in a picture of this size, or null. What is hit straight on comes first; else
 * the nearest thing within `reach` px.
 */
export function pick(
  camera: Camera,
  parts: Object3D,
  { x, y, width, height }: { x: number; y: number; width: number; height: number },
  reach: number,
): Hit | null {
  const hit = (dx: number, dy: number) => {
    place.set(((x + dx) / width) * 2 - 1, 1 - ((y + dy) / height) * 2)
    ray.setFromCamera(place, camera)
    return ray.intersectObject(parts, true).find(({ object }) => shown(object))
  }
  const near = () => AROUND.flatMap(([dx, dy]) => hit(dx * reach, dy * reach) ?? [])
  const found = hit(0, 0) ?? near().sort((a, b) => a.distance - b.distance)[0]
  const path = found === undefined ? null : pathOf(found.object)
  return found === undefined || path === null ? null : { path, at: found.point }
}

function shown(object: Object3D): boolean {
  for (let here: Object3D | null = object; here !== null; here = here.parent) if (!here.visible) return false
  return true
}

function pathOf(object: Object3D): string | null {
  for (let here: Object3D | null = object; here !== null; here = here.parent) {
    const { path } = here.userData
    if (typeof path === "string") return path
  }
  return null
}
