import {
  BoxGeometry,
  BufferAttribute,
  BufferGeometry,
  CylinderGeometry,
  LatheGeometry,
  SphereGeometry,
  Vector2,
} from "three"
import type { MeshData } from "./meshData"

/** Shared shapes of size 1, stretched by each mesh. Along x from 0 to 1, radius 1, unless said. */
const alongX = (geometry: BufferGeometry): BufferGeometry => geometry.rotateZ(-Math.PI / 2)

export const unitTube = alongX(new CylinderGeometry(1, 1, 1, 24, 1).translate(0, 0.5, 0))
/** Tip at x = 1. */
export const unitCone = alongX(new CylinderGeometry(0, 1, 1, 20, 1).translate(0, 0.5, 0))
export const unitSphere = new SphereGeometry(1, 24, 16)
export const unitBox = new BoxGeometry(1, 1, 1)

/** A turned body from its outline: distance along x, and radius. */
const turned = (outline: readonly (readonly [number, number])[], around = 32): BufferGeometry =>
  alongX(
    new LatheGeometry(
      outline.map(([x, radius]) => new Vector2(radius, x)),
      around,
    ),
  )

/** A disc with rounded rims, so that the discs of a stack are seen one by one. */
export const unitDisc = turned([
  [0.02, 0],
  [0.02, 0.9],
  [0.05, 0.955],
  [0.16, 1],
  [0.84, 1],
  [0.95, 0.955],
  [0.98, 0.9],
  [0.98, 0],
])

/** Rubber between two plates, its waist drawn in. */
export const unitDamper = turned([
  [0, 0],
  [0, 0.92],
  [0.1, 1],
  [0.28, 0.93],
  [0.5, 0.8],
  [0.72, 0.93],
  [0.9, 1],
  [1, 0.92],
  [1, 0],
])

/** A mesh of our own making; the arrays are the geometry's, so writing them and calling `changed` redraws. */
export function geometryOf(mesh: MeshData): BufferGeometry {
  const geometry = new BufferGeometry()
  geometry.setAttribute("position", new BufferAttribute(mesh.positions, 3))
  geometry.setAttribute("normal", new BufferAttribute(mesh.normals, 3))
  geometry.setIndex(new BufferAttribute(mesh.indices, 1))
  return geometry
}

export function changed(geometry: BufferGeometry): void {
  geometry.getAttribute("position").needsUpdate = true
  geometry.getAttribute("normal").needsUpdate = true
  geometry.computeBoundingSphere()
}

type Point = readonly [number, number, number]

/** Straight pieces for a stroke material, from point to point. */
export function strokeGeometry(pieces: readonly (readonly [Point, Point])[]): BufferGeometry {
  const position: number[] = []
  const other: number[] = []
  const corner: number[] = []
  const index: number[] = []
  pieces.forEach(([from, to], piece) => {
    // At its far end a piece looks back, so both its sides swap there.
    for (const [here, there, side] of [
      [from, to, 1],
      [from, to, -1],
      [to, from, -1],
      [to, from, 1],
    ] as const) {
      position.push(...here)
      other.push(...there)
      corner.push(0.5, side)
    }
    const at = piece * 4
    index.push(at, at + 1, at + 2, at + 2, at + 1, at + 3)
  })
  const geometry = new BufferGeometry()
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(position), 3))
  geometry.setAttribute("other", new BufferAttribute(new Float32Array(other), 3))
  geometry.setAttribute("corner", new BufferAttribute(new Float32Array(corner), 2))
  geometry.setIndex(index)
  return geometry
}

/** From the origin to (1, 0, 0). */
export const unitStroke = strokeGeometry([
  [
    [0, 0, 0],
    [1, 0, 0],
  ],
])

const CIRCLE = 72
/** Three circles of radius 1 about the origin, square to the axes. */
export const unitCircles = strokeGeometry(
  [0, 1, 2].flatMap((axis) =>
    Array.from({ length: CIRCLE }, (_, index) => {
      const point = (at: number): Point => {
        const angle = (2 * Math.PI * at) / CIRCLE
        const p = [Math.cos(angle), Math.sin(angle)]
        p.splice(axis, 0, 0)
        return p as unknown as Point
      }
      return [point(index), point(index + 1)] as const
    }),
  ),
)

/** The twelve edges of a box of size 1 about the origin. */
export const unitBoxEdges = strokeGeometry(
  [0, 1, 2].flatMap((axis) =>
    [-0.5, 0.5].flatMap((a) =>
      [-0.5, 0.5].map((b) => {
        const point = (along: number): Point => {
          const p = [a, b]
          p.splice(axis, 0, along)
          return p as unknown as Point
        }
        return [point(-0.5), point(0.5)] as const
      }),
    ),
  ),
)
