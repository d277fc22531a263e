import { describe, expect, it } from "vitest"
import { compose, principal, type Vec3 } from "../../src/core/solids"
import { newScene } from "../../src/scene/templates"
import { arcEnd, arcIndices, arcSweep, emptyArc, FULLEST, layArc } from "../../src/view3d/shapes/arc"
import { smoothThrough } from "../../src/picture/outline/smoothThrough"
import { ellipsoidAxes } from "../../src/view3d/shapes/ellipsoid"
import { loft } from "../../src/view3d/shapes/loft"
import type { MeshData } from "../../src/view3d/shapes/meshData"
import { emptyRibbon, layRibbon } from "../../src/view3d/shapes/ribbon"
import { gripSections, riserSections } from "../../src/picture/outline/riser"

/** Volume inside a closed mesh, m³, by the divergence theorem; positive only when its triangles are wound outward. */
function volume({ positions: p, indices }: MeshData): number {
  let sum = 0
  for (let at = 0; at < indices.length; at += 3) {
    const [a, b, c] = [indices[at]! * 3, indices[at + 1]! * 3, indices[at + 2]! * 3]
    sum +=
      p[a]! * (p[b + 1]! * p[c + 2]! - p[b + 2]! * p[c + 1]!) +
      p[a + 1]! * (p[b + 2]! * p[c]! - p[b]! * p[c + 2]!) +
      p[a + 2]! * (p[b]! * p[c + 1]! - p[b + 1]! * p[c]!)
  }
  return sum / 6
}

/** Smallest cosine between a triangle's own normal and those of its corners. */
function worstNormal({ positions: p, normals: n, indices }: MeshData): number {
  let worst = 1
  for (let at = 0; at < indices.length; at += 3) {
    const [a, b, c] = [indices[at]! * 3, indices[at + 1]! * 3, indices[at + 2]! * 3]
    const u = [0, 1, 2].map((k) => p[b + k]! - p[a + k]!)
    const v = [0, 1, 2].map((k) => p[c + k]! - p[a + k]!)
    const face = [u[1]! * v[2]! - u[2]! * v[1]!, u[2]! * v[0]! - u[0]! * v[2]!, u[0]! * v[1]! - u[1]! * v[0]!]
    const size = Math.hypot(...face)
    if (size < 1e-12) continue
    for (const corner of [a, b, c]) {
      worst = Math.min(worst, (face[0]! * n[corner]! + face[1]! * n[corner + 1]! + face[2]! * n[corner + 2]!) / size)
    }
  }
  return worst
}

describe("a strip along a curve", () => {
  it("encloses length × width × thickness, with its normals outward, on a straight curve", () => {
    const curve: Vec3[] = [0, 0.2, 0.5, 0.7].map((s) => [0.3 + s * 0.6, 0.1 + s * 0.8, 0])
    const mesh = emptyRibbon(curve.length)
    layRibbon(mesh, curve, () => ({ width: 0.03, thickness: 0.005 }))
    expect(volume(mesh)).toBeCloseTo(0.7 * 0.03 * 0.005, 9)
    expect(worstNormal(mesh)).toBeGreaterThan(0.9999)
  })

  it("takes new points into the same arrays and never yields what is not a number, even where points coincide", () => {
    const mesh = emptyRibbon(3)
    const { positions } = mesh
    layRibbon(
      mesh,
      [
        [0, 0, 0],
        [0, 0, 0],
        [0, 0, 0],
      ],
      () => ({ width: 0.02, thickness: 0.003 }),
    )
    expect(mesh.positions).toBe(positions)
    expect([...mesh.positions, ...mesh.normals].every(Number.isFinite)).toBe(true)
  })
})

describe("a smooth outline", () => {
  const knots = [
    { at: -2, value: 3 },
    { at: 1, value: 7 },
    { at: 2, value: 7 },
    { at: 5, value: 2 },
  ]
  it("passes through its knots, stays level beyond them and never leaves the span of its neighbours", () => {
    const f = smoothThrough(knots)
    for (const { at, value } of knots) expect(f(at)).toBeCloseTo(value, 12)
    expect([f(-9), f(9)]).toEqual([3, 2])
    for (let x = -2; x <= 5; x += 0.05) {
      expect(f(x)).toBeLessThanOrEqual(7 + 1e-12)
      expect(f(x)).toBeGreaterThanOrEqual(2 - 1e-12)
    }
    expect(f(1.5)).toBe(7)
  })
  it("is nothing without knots", () => expect(smoothThrough([])(3)).toBe(0))
})

describe("the riser as drawn", () => {
  const scene = newScene()
  const at = (y: number, of = scene) =>
    riserSections(of).reduce((a, b) => (Math.abs(b.y - y) < Math.abs(a.y - y) ? b : a))

  it("runs from limb root to limb root and is a closed body wound outward", () => {
    const sections = riserSections(scene)
    expect(sections[0]!.y).toBeCloseTo(0.02 - 0.29, 12)
    expect(sections.at(-1)!.y).toBeCloseTo(0.02 + 0.29, 12)
    const mesh = loft(sections)
    expect(volume(mesh)).toBeGreaterThan(2e-4)
    expect(volume(mesh)).toBeLessThan(1.2e-3)
    expect(worstNormal(mesh)).toBeGreaterThan(0)
  })

  it("has its front where the front mount is, and follows the mount when it is moved a little", () => {
    expect(at(-0.07).front).toBeCloseTo(0.04, 2)
    const moved = newScene()
    moved.mounts.front!.atMm = [53, -70, 0]
    expect(at(-0.07, moved).front).toBeCloseTo(0.053, 2)
  })

  it("is cut away on the left beside the arrow for a right-handed archer and mirrored for a left-handed one", () => {
    const right = at(0.08)
    expect(right.left).toBeGreaterThan(0)
    const left = newScene()
    left.bow.hand = "left"
    expect(at(0.08, left)).toEqual({ ...right, left: -right.right, right: -right.left })
    expect(at(-0.2).left).toBeCloseTo(-at(-0.2).right, 12)
  })

  it("keeps a sound shape for a bow far smaller than any real one", () => {
    const tiny = newScene()
    if (tiny.bow.kind === "recurve") tiny.bow.limbs.rootMm = [0, 10]
    const mesh = loft(riserSections(tiny))
    expect([...mesh.positions, ...mesh.normals].every(Number.isFinite)).toBe(true)
  })

  it("has the deepest place of the grip at the pivot, the origin", () => {
    const sections = gripSections()
    const deepest = Math.max(...sections.map((section) => section.back))
    expect(deepest).toBeCloseTo(0, 4)
    expect(Math.abs(sections.find((section) => section.back === deepest)!.y)).toBeLessThan(0.006)
  })
})

describe("turn-resistance arrows", () => {
  it("grow with the multiple, show nothing for what is no number, and never close", () => {
    const sweeps = [0.5, 1, 2, 3, 7, 30, 1e6].map(arcSweep)
    for (let i = 1; i < sweeps.length; i++) expect(sweeps[i]!).toBeGreaterThan(sweeps[i - 1]!)
    expect(sweeps.at(-1)!).toBeLessThan(2 * Math.PI - 0.4)
    expect([arcSweep(Number.NaN), arcSweep(-2), arcSweep(0)]).toEqual([0, 0, 0])
    expect(arcSweep(Number.POSITIVE_INFINITY)).toBeGreaterThan(arcSweep(1e6))
  })

  it("are bent tubes of the asked thickness that end where the arrow's head begins", () => {
    const mesh = emptyArc()
    layArc(mesh, 0.2, 0.006, -0.5, 2)
    // A bent tube has the volume of a straight one as long as its middle line (Pappus's theorem); eight sides of it.
    const octagon = 2 * Math.SQRT2 * 0.003 ** 2
    expect(volume(closed(mesh)) / (octagon * 0.2 * 2)).toBeCloseTo(1, 2)
    expect(worstNormal(mesh)).toBeGreaterThan(0.9)
    const { at, heading } = arcEnd(0.2, 1.5)
    expect(Math.hypot(...at)).toBeCloseTo(0.2, 12)
    expect(at[0] * heading[0] + at[1] * heading[1]).toBeCloseTo(0, 12)
    expect(heading[0]).toBeLessThan(0)
  })

  it("laid whole are drawn in part, from their beginning to within the arrow's head", () => {
    const mesh = emptyArc()
    layArc(mesh, 0.2, 0.006, -0.5, FULLEST)
    expect(arcIndices(FULLEST)).toBe(mesh.indices.length)
    expect(arcIndices(0)).toBe(0)
    for (const sweep of [0.3, 1, 2, 5]) {
      const drawn = mesh.indices.slice(0, arcIndices(sweep))
      const angles = [...drawn].map((at) => {
        const angle = Math.atan2(mesh.positions[at * 3 + 1]!, mesh.positions[at * 3]!) + 0.5
        return angle < -1e-6 ? angle + 2 * Math.PI : angle
      })
      expect(Math.max(...angles) - sweep).toBeGreaterThanOrEqual(-1e-6)
      // The head is 24 mm long; on the smallest circle, 130 mm, that is 0.18.
      expect(Math.max(...angles) - sweep).toBeLessThan(0.07)
    }
  })
})

/** The tube with flat ends put in, as fans from the first of their eight corners. */
function closed(mesh: MeshData): MeshData {
  const last = mesh.positions.length / 3 - 8
  const ends = [1, 2, 3, 4, 5, 6].flatMap((k) => [0, k, k + 1, last, last + k + 1, last + k])
  return { ...mesh, indices: new Uint32Array([...mesh.indices, ...ends]) }
}

describe("the ellipsoid of a body", () => {
  it("is the body itself for a solid ellipsoid", () => {
    const [m, a, b, c] = [2, 0.3, 0.5, 0.7]
    const moments: Vec3 = [(m * (b * b + c * c)) / 5, (m * (a * a + c * c)) / 5, (m * (a * a + b * b)) / 5]
    ellipsoidAxes(m, moments).forEach((axis, k) => expect(axis).toBeCloseTo([a, b, c][k]!, 12))
  })

  it("has no width along what a rod has none along, and is nothing without mass", () => {
    const rod = compose([-3, -1, 1, 3].map((x) => ({ mass: 0.5, centre: [x, 0, 0] as Vec3, aboutCentre: newTensor })))
    const axes = ellipsoidAxes(rod.mass, principal(rod.aboutCentre).moments)
    expect(axes[0]).toBeCloseTo(5, 9)
    expect([axes[1], axes[2]]).toEqual([0, 0])
    expect(ellipsoidAxes(0, [2, 3, 5])).toEqual([0, 0, 0])
  })
})

const newTensor = { xx: 0, yy: 0, zz: 0, xy: 0, xz: 0, yz: 0 }
