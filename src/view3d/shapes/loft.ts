import { emptyMesh, type MeshData, putNormal, putVertex } from "./meshData"
import type { Section } from "../../picture/outline/riser"

const AROUND = 20
/** Exponent of the superellipse that rounds a section: 2 an ellipse, large a rectangle. */
const SQUARENESS = 4.5

/** A closed body through sections (two or more, rising): rounded boxes joined by a smooth skin, flat at both ends. */
export function loft(sections: readonly Section[]): MeshData {
  const rings = sections.length
  const mesh = emptyMesh((rings + 2) * AROUND, (rings - 1) * AROUND * 2 + (AROUND - 2) * 2)
  sections.forEach((section, ring) => putRing(mesh, ring, section))
  putRing(mesh, rings, sections[0]!)
  putRing(mesh, rings + 1, sections[rings - 1]!)
  let next = 0
  const triangle = (a: number, b: number, c: number) => {
    mesh.indices.set([a, b, c], next)
    next += 3
  }
  for (let ring = 0; ring + 1 < rings; ring++) {
    for (let step = 0; step < AROUND; step++) {
      const a = ring * AROUND + step
      const b = ring * AROUND + ((step + 1) % AROUND)
      triangle(a, a + AROUND, b + AROUND)
      triangle(a, b + AROUND, b)
    }
  }
  const skin = next
  for (let step = 1; step + 1 < AROUND; step++) {
    triangle(rings * AROUND, rings * AROUND + step, rings * AROUND + step + 1)
    triangle((rings + 1) * AROUND, (rings + 1) * AROUND + step + 1, (rings + 1) * AROUND + step)
  }
  smoothNormals(mesh, skin)
  for (let step = 0; step < AROUND; step++) {
    putNormal(mesh, rings * AROUND + step, 0, -1, 0)
    putNormal(mesh, (rings + 1) * AROUND + step, 0, 1, 0)
  }
  return mesh
}

function putRing(mesh: MeshData, ring: number, { y, back, front, left, right }: Section): void {
  const [cx, cz] = [(back + front) / 2, (left + right) / 2]
  const [hx, hz] = [(front - back) / 2, (right - left) / 2]
  for (let step = 0; step < AROUND; step++) {
    // Half a step on, so that no vertex sits on the sharpest part of the rounding.
    const angle = (2 * Math.PI * (step + 0.5)) / AROUND
    putVertex(mesh, ring * AROUND + step, cx + hx * rounded(Math.cos(angle)), y, cz + hz * rounded(Math.sin(angle)))
  }
}

const rounded = (value: number): number => Math.sign(value) * Math.abs(value) ** (2 / SQUARENESS)

/** Normals of the first `count` indices' triangles, shared out to their vertices by area. */
function smoothNormals({ positions: p, normals: n, indices }: MeshData, count: number): void {
  n.fill(0)
  for (let at = 0; at < count; at += 3) {
    const [a, b, c] = [indices[at]! * 3, indices[at + 1]! * 3, indices[at + 2]! * 3]
    const [ux, uy, uz] = [p[b]! - p[a]!, p[b + 1]! - p[a + 1]!, p[b + 2]! - p[a + 2]!]
    const [vx, vy, vz] = [p[c]! - p[a]!, p[c + 1]! - p[a + 1]!, p[c + 2]! - p[a + 2]!]
    const face = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx]
    for (const corner of [a, b, c]) for (let k = 0; k < 3; k++) n[corner + k]! += face[k]!
  }
  for (let at = 0; at < n.length; at += 3) {
    const length = Math.hypot(n[at]!, n[at + 1]!, n[at + 2]!) || 1
    for (let k = 0; k < 3; k++) n[at + k]! /= length
  }
}
