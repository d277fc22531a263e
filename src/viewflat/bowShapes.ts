import type { Vec3 } from "../core/solids"
import type { LimbPlace } from "../scene/limbPlace"
import type { Scene } from "../scene/schema"
import { compoundLimb, recurveStrip, type StripSize, splitStrip, withButt } from "../picture/outline/limbs"
import { gripSections, riserSections, type Section } from "../picture/outline/riser"
import { cylinder } from "./bodies"
import { pathThrough } from "./outline"
import { type Draw, type Shape, solid } from "./shape"

/** The riser with its grip, or both limbs. */
export const bowShapes = (scene: Scene, limbs: LimbPlace, kind: "riser" | "limbs", draw: Draw): Shape[] =>
  kind === "riser"
    ? [...sectioned("flat-riser", riserSections(scene), draw), ...sectioned("flat-grip", gripSections(), draw)]
    : ([1, -1] as const).flatMap((side) => limbShapes(scene, limbs, side, draw))

/** Sections this many apart are drawn: a flat outline needs fewer than a solid one. */
const EVERY = 2

/** Its four long faces, whichever way it is seen: those on edge have no area. */
function sectioned(look: string, all: readonly Section[], draw: Draw): Shape[] {
  const sections = all.filter((_, index) => index % EVERY === 0 || index === all.length - 1)
  type Edge = (section: Section) => Vec3
  const edges: Edge[] = [
    ({ y, back, left }) => [back, y, left],
    ({ y, front, left }) => [front, y, left],
    ({ y, front, right }) => [front, y, right],
    ({ y, back, right }) => [back, y, right],
  ]
  const face = (a: Edge, b: Edge) =>
    pathThrough([...sections.map((one) => draw(a(one))), ...sections.map((one) => draw(b(one))).reverse()], true)
  return edges.map((edge, index) => ({ look, path: face(edge, edges[(index + 1) % edges.length]!) }))
}

function limbShapes(scene: Scene, limbs: LimbPlace, side: 1 | -1, draw: Draw): Shape[] {
  const curve = limbs.curves?.[side > 0 ? 0 : 1]
  if (curve !== undefined) return strip(withButt(thinned(curve)), recurveStrip, draw)
  const { curve: line, cam, camRadius } = compoundLimb(scene.bow, limbs, side)
  return [
    ...strip(line, splitStrip, draw),
    solid("flat-cam", cylinder([cam[0], cam[1], cam[2] - 0.008], [0, 0, 1], 0.016, camRadius), draw),
  ]
}

/** Points of a limb's curve that are drawn. */
const CURVE_POINTS = 28

function thinned(curve: readonly Vec3[]): Vec3[] {
  const step = Math.max(1, Math.floor(curve.length / CURVE_POINTS))
  return curve.filter((_, index) => index % step === 0 || index === curve.length - 1)
}

/** A limb as its thickness seen from the side and its width seen from above, along a curve in the bow's plane. */
function strip(curve: readonly Vec3[], size: StripSize, draw: Draw): Shape[] {
  const edge = (offset: (u: number, nx: number, ny: number, at: Vec3) => Vec3) =>
    curve.map((at, index) => {
      const before = curve[Math.max(0, index - 1)]!
      const after = curve[Math.min(curve.length - 1, index + 1)]!
      const [tx, ty] = [after[0] - before[0], after[1] - before[1]]
      const length = Math.hypot(tx, ty) || 1
      return draw(offset(index / (curve.length - 1), -ty / length, tx / length, at))
    })
  const thick = (sign: number) =>
    edge((u, nx, ny, at) => {
      const half = (sign * size(u).thickness) / 2
      return [at[0] + nx * half, at[1] + ny * half, at[2]]
    })
  const wide = (sign: number) => edge((u, _nx, _ny, at) => [at[0], at[1], at[2] + (sign * size(u).width) / 2])
  return [wide, thick].map((edges) => ({
    look: "flat-limb",
    path: pathThrough([...edges(1), ...edges(-1).reverse()], true),
  }))
}
