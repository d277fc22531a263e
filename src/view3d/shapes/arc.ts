import type { Vec3 } from "../../core/solids"
import { emptyMesh, type MeshData, putNormal, putVertex } from "./meshData"

/** Longest sweep of a turn-resistance arc: an arrow that closed on itself would not show which way it points. */
export const FULLEST = (330 * Math.PI) / 180
/** Multiple of the stripped bow at which half of the longest sweep is reached. */
const HALF_AT = 4

/**
 * How far an arrow for a turn resistance of `multiple` × the stripped bow's sweeps, rad: grows with every added
 * gram, fast where rigs lie (1 … 8), and never closes the circle. Anything that is no multiple (NaN, below 0): 0.
 */
export function arcSweep(multiple: number): number {
  if (!(multiple > 0)) return 0
  if (multiple === Number.POSITIVE_INFINITY) return FULLEST
  return (FULLEST * multiple) / (multiple + HALF_AT)
}

const SIDES = 8
const SEGMENTS = 96
/** Numbers in the index of one segment: two triangles a side. */
const INDICES = SIDES * 6

/** How much of the index of an arc laid over `FULLEST` draws it over `sweep`, to the end of a segment within the arrow's head. */
export const arcIndices = (sweep: number): number =>
  Math.max(0, Math.ceil((sweep / FULLEST) * SEGMENTS - 1e-9)) * INDICES

/** A bent tube in the x-y plane, to be laid by `layArc`. */
export function emptyArc(): MeshData {
  const mesh = emptyMesh((SEGMENTS + 1) * SIDES, SEGMENTS * SIDES * 2)
  let next = 0
  for (let segment = 0; segment < SEGMENTS; segment++) {
    for (let side = 0; side < SIDES; side++) {
      const a = segment * SIDES + side
      const b = segment * SIDES + ((side + 1) % SIDES)
      mesh.indices.set([a, a + SIDES, b + SIDES, a, b + SIDES, b], next)
      next += 6
    }
  }
  return mesh
}

/** Lays the tube (radius `thickness`/2, m) along a circle of `radius` about the origin, from `start` over `sweep`, rad. */
export function layArc(mesh: MeshData, radius: number, thickness: number, start: number, sweep: number): void {
  for (let segment = 0; segment <= SEGMENTS; segment++) {
    const angle = start + (sweep * segment) / SEGMENTS
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    for (let side = 0; side < SIDES; side++) {
      const around = (2 * Math.PI * side) / SIDES
      const [out, up] = [Math.cos(around), Math.sin(around)]
      const r = radius + (thickness / 2) * out
      const at = segment * SIDES + side
      putVertex(mesh, at, r * c, r * s, (thickness / 2) * up)
      // Turning the section the other way round with the sweep's sign would keep it outward; sweeps are positive.
      putNormal(mesh, at, out * c, out * s, up)
    }
  }
}

/** End of an arc and the unit direction in which it goes on there, x-y plane, m. */
export function arcEnd(radius: number, angle: number): { readonly at: Vec3; readonly heading: Vec3 } {
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  return { at: [radius * c, radius * s, 0], heading: [0 - s, c, 0] }
}
