import { type BufferGeometry, type Material, type Matrix4, Mesh, type Object3D, Vector3 } from "three"
import type { Mat3, Vec3 } from "../../core/solids"

const X = new Vector3(1, 0, 0)
const way = new Vector3()

/** Stretches something of size 1 along x from `start` along the unit `direction`; `radius` is its half width. */
export function layAlong(object: Object3D, start: Vec3, direction: Vec3, length: number, radius = 1): void {
  object.position.set(start[0], start[1], start[2])
  way.set(direction[0], direction[1], direction[2])
  object.quaternion.setFromUnitVectors(X, way)
  // A length of zero would make the matrix impossible to invert.
  object.scale.set(Math.max(length, 1e-6), radius, radius)
}

/** The same between two points; hidden where they coincide. */
export function layBetween(object: Object3D, from: Vec3, to: Vec3, radius = 1): void {
  way.set(to[0] - from[0], to[1] - from[1], to[2] - from[2])
  const length = way.length()
  object.visible = length > 1e-6
  if (!object.visible) return
  way.divideScalar(length)
  object.position.set(from[0], from[1], from[2])
  object.quaternion.setFromUnitVectors(X, way)
  object.scale.set(length, radius, radius)
}

export const putAt = (object: Object3D, place: Vec3): void => {
  object.position.set(place[0], place[1], place[2])
}

/** Columns of `rows` as axes, in three's terms. */
export function setRotation(matrix: Matrix4, rows: Mat3): Matrix4 {
  const [a, b, c] = rows
  return matrix.set(a[0], a[1], a[2], 0, b[0], b[1], b[2], 0, c[0], c[1], c[2], 0, 0, 0, 0, 1)
}

/** A mesh drawn whatever the frustum says: its shape changes under it. */
export function mesh(geometry: BufferGeometry, material: Material): Mesh {
  const made = new Mesh(geometry, material)
  made.frustumCulled = false
  return made
}
