import type { Vec3 } from "../../core/solids"
import type { StripSize } from "../../picture/outline/limbs"
import { emptyMesh, type MeshData, putNormal, putVertex } from "./meshData"

/** A strip of `rings` cross-sections: four flat sides, each with its own normals, and two end caps. */
export const emptyRibbon = (rings: number): MeshData => {
  const mesh = emptyMesh(rings * 8 + 8, (rings - 1) * 8 + 4)
  let next = 0
  const quad = (a: number, b: number, c: number, d: number) => {
    mesh.indices.set([a, b, c, a, c, d], next)
    next += 6
  }
  for (let ring = 0; ring + 1 < rings; ring++) {
    for (let side = 0; side < 4; side++) {
      const a = ring * 8 + side * 2
      quad(a, a + 8, a + 9, a + 1)
    }
  }
  const caps = rings * 8
  quad(caps, caps + 1, caps + 2, caps + 3)
  quad(caps + 7, caps + 6, caps + 5, caps + 4)
  return mesh
}

/**
 * Lays a strip along a plane curve (x-y plane, m; two points or more, one ring a point) into a mesh made by
 * `emptyRibbon`, without making new arrays. The curve is the strip's middle. Points that coincide take the
 * direction of their neighbours.
 */
export function layRibbon(mesh: MeshData, curve: readonly Vec3[], size: StripSize): void {
  const last = curve.length - 1
  for (let ring = 0; ring <= last; ring++) {
    const here = curve[ring]!
    const before = curve[Math.max(0, ring - 1)]!
    const after = curve[Math.min(last, ring + 1)]!
    const [tx, ty] = direction(after[0] - before[0], after[1] - before[1])
    const { width, thickness } = size(ring / last)
    const [nx, ny] = [0 - ty, tx]
    const [h, w] = [thickness / 2, width / 2]
    // Corners in turn around the section, seen from the tip: (n, -z), (-n, -z), (-n, +z), (n, +z).
    const corners = [
      [h, -w],
      [-h, -w],
      [-h, w],
      [h, w],
    ] as const
    const normals = [
      [0, 0, -1],
      [-nx, -ny, 0],
      [0, 0, 1],
      [nx, ny, 0],
    ] as const
    for (let side = 0; side < 4; side++) {
      for (let end = 0; end < 2; end++) {
        const [across, z] = corners[(side + end) % 4]!
        const at = ring * 8 + side * 2 + end
        putVertex(mesh, at, here[0] + nx * across, here[1] + ny * across, here[2] + z)
        const [a, b, c] = normals[side]!
        putNormal(mesh, at, a, b, c)
      }
    }
    if (ring !== 0 && ring !== last) continue
    const cap = (last + 1) * 8 + (ring === 0 ? 0 : 4)
    const facing = ring === 0 ? -1 : 1
    corners.forEach(([across, z], corner) => {
      putVertex(mesh, cap + corner, here[0] + nx * across, here[1] + ny * across, here[2] + z)
      putNormal(mesh, cap + corner, tx * facing, ty * facing, 0)
    })
  }
}

function direction(x: number, y: number): [number, number] {
  const length = Math.hypot(x, y)
  return length > 0 ? [x / length, y / length] : [0, 1]
}
