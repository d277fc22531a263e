/** Triangles ready for the graphics card: three numbers a vertex, three indices a triangle, wound to face outward. */
export interface MeshData {
  readonly positions: Float32Array
  readonly normals: Float32Array
  readonly indices: Uint32Array
}

export const emptyMesh = (vertices: number, triangles: number): MeshData => ({
  positions: new Float32Array(vertices * 3),
  normals: new Float32Array(vertices * 3),
  indices: new Uint32Array(triangles * 3),
})

/** Writes one vertex; a component that is not finite is written as it is, so that a test can see it. */
export function putVertex(mesh: MeshData, at: number, x: number, y: number, z: number): void {
  mesh.positions[at * 3] = x
  mesh.positions[at * 3 + 1] = y
  mesh.positions[at * 3 + 2] = z
}

export function putNormal(mesh: MeshData, at: number, x: number, y: number, z: number): void {
  const length = Math.hypot(x, y, z) || 1
  mesh.normals[at * 3] = x / length
  mesh.normals[at * 3 + 1] = y / length
  mesh.normals[at * 3 + 2] = z / length
}
