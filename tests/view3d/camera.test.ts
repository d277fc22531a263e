import { describe, expect, it } from "vitest"
import { PerspectiveCamera } from "three"
import { dot, subtract, type Vec3 } from "../../src/core/solids"
import { allInside, eyeOf, fitView, viewAxes } from "../../src/view3d/camera/fit"
import { keyView } from "../../src/view3d/camera/keys"
import { metresPerPixel, neared, shifted } from "../../src/view3d/camera/moves"
import { createProjector } from "../../src/view3d/camera/projector"
import { figuresPlace } from "../../src/picture/figuresPlace"
import { between, directions, FIELD, HALF_HEIGHT, insetsFor, type View } from "../../src/view3d/camera/view"

const bow: Vec3[] = [
  [0, 0.87, 0],
  [0.02, -0.83, 0],
  [-0.22, 0.05, 0],
  [0.93, -0.07, 0.02],
  [-0.2, -0.12, 0.31],
  [-0.2, -0.12, -0.29],
]

/** Where a point falls, as fractions of the picture from its left and top edge. */
function seen(point: Vec3, eye: Vec3, axes: ReturnType<typeof viewAxes>, aspect: number): [number, number] {
  const r = subtract(point, eye)
  const depth = -dot(r, axes.toward)
  return [
    (1 + dot(r, axes.right) / (depth * HALF_HEIGHT * aspect)) / 2,
    (1 - dot(r, axes.up) / (depth * HALF_HEIGHT)) / 2,
  ]
}

describe("fitting the bow into the picture", () => {
  for (const preset of ["side", "top", "archer", "free"] as const) {
    it(`keeps every point inside the margins and touches them, from the ${preset} view`, () => {
      const [width, height] = [1040, 780]
      const aspect = width / height
      const axes = viewAxes(directions[preset].azimuth, directions[preset].elevation)
      const insets = insetsFor(width, height, figuresPlace(width, false))
      const fit = fitView(bow, axes, HALF_HEIGHT, aspect, insets)
      const places = bow.map((point) => seen(point, eyeOf(fit, axes), axes, aspect))
      const slack = [
        Math.min(...places.map(([x]) => x)) - insets.left,
        1 - insets.right - Math.max(...places.map(([x]) => x)),
        Math.min(...places.map(([, y]) => y)) - insets.top,
        1 - insets.bottom - Math.max(...places.map(([, y]) => y)),
      ]
      for (const room of slack) expect(room).toBeGreaterThan(-1e-6)
      // In the direction that is full, no room is left on either side.
      expect(Math.min(slack[0]! + slack[1]!, slack[2]! + slack[3]!)).toBeLessThan(1e-4)
    })
  }

  it("tells when something sticks out of the picture or lies behind the camera", () => {
    const axes = viewAxes(0, 0)
    const eye: Vec3 = [0, 0, 5]
    expect(allInside(bow, eye, axes, HALF_HEIGHT, 1.5)).toBe(true)
    expect(allInside([...bow, [3, 0, 0]], eye, axes, HALF_HEIGHT, 1.5)).toBe(false)
    expect(allInside([[0, 0, 7]], eye, axes, HALF_HEIGHT, 1.5)).toBe(false)
  })

  it("looks at the grip where there is nothing to fit", () => {
    expect(fitView([], viewAxes(0, 0), HALF_HEIGHT, 2, insetsFor(700, 350, figuresPlace(700, true))).target).toEqual([
      0, 0, 0,
    ])
  })
})

describe("presets", () => {
  it("have the target to the right from the side and from above, and straight ahead for the archer", () => {
    for (const name of ["side", "top"] as const) {
      expect(viewAxes(directions[name].azimuth, directions[name].elevation).right[0]).toBeCloseTo(1, 9)
    }
    const eye = viewAxes(directions.archer.azimuth, directions.archer.elevation)
    expect(eye.toward[0]).toBeLessThan(-0.9)
    expect(eye.right[2]).toBeCloseTo(1, 9)
  })

  it("are reached around the shorter way, ending exactly there", () => {
    const from: View = { azimuth: 3, elevation: 0.2, distance: 2, target: [0, 0, 0] }
    const to: View = { azimuth: -3, elevation: 0.5, distance: 3, target: [0.2, 0.3, 0.5] }
    expect(between(from, to, 0.5).azimuth).toBeCloseTo(Math.PI, 9)
    expect(between(from, to, 1)).toEqual(to)
    expect(between(from, to, 0)).toEqual(from)
  })
})

describe("camera keys", () => {
  const view: View = { azimuth: 0.2, elevation: 0.3, distance: 5, target: [0, 0, 0] }
  it("turn with arrows, move with Shift, zoom with plus and minus, and leave other keys alone", () => {
    expect(keyView(view, "ArrowLeft", false)!.azimuth).toBeGreaterThan(0.2)
    expect(keyView(view, "ArrowUp", false)!.elevation).toBeLessThan(0.3)
    const moved = keyView(view, "ArrowRight", true)!
    expect(dot(moved.target, viewAxes(0.2, 0.3).right)).toBeCloseTo(-0.3, 9)
    expect(keyView(view, "+", false)!.distance).toBeLessThan(5)
    expect(keyView(keyView(view, "+", false)!, "-", false)!.distance).toBeCloseTo(5, 9)
    expect(keyView(view, "Tab", false)).toBeNull()
  })

  it("stop short of straight up and of the zoom's ends", () => {
    let turned = view
    for (let press = 0; press < 70; press++) turned = keyView(turned, "ArrowDown", false)!
    expect(turned.elevation).toBeLessThan(Math.PI / 2)
    let near = view
    for (let press = 0; press < 70; press++) near = keyView(near, "+", false)!
    expect(near.distance).toBe(0.25)
  })
})

describe("moving the camera by hand", () => {
  const view: View = { azimuth: 0.7, elevation: 0.2, distance: 3, target: [0.2, 0.3, 0.5] }
  const axes = viewAxes(view.azimuth, view.elevation)
  const at = (of: View, point: Vec3) => seen(point, eyeOf(of, viewAxes(of.azimuth, of.elevation)), axes, 1.5)

  it("zooms about the place pointed at: what is seen there stays there", () => {
    const point = shifted(view, 0.3, -0.2).target
    const [before, after] = [at(view, point), at(neared(view, 0.5, 0.3, -0.2), point)]
    expect(after[0]).toBeCloseTo(before[0], 9)
    expect(after[1]).toBeCloseTo(before[1], 9)
    // At the end of the way in there is nothing left to move.
    expect(neared({ ...view, distance: 0.25 }, 0.5, 0.3, 0).target).toEqual(view.target)
  })

  it("shifts by as many px as asked", () => {
    const height = 500
    const moved = shifted(view, 70 * metresPerPixel(view, height), 0)
    const [before, after] = [at(view, view.target), at(moved, view.target)]
    expect((before[0] - after[0]) * height * 1.5).toBeCloseTo(70, 9)
  })
})

describe("the projector", () => {
  const camera = new PerspectiveCamera((FIELD * 180) / Math.PI, 2, 0.05, 40)
  camera.position.set(0, 0, 5)
  camera.updateProjectionMatrix()

  it("puts the looked-at point in the middle, right to the right and up to the top, nearer at smaller depth", () => {
    const projector = createProjector(camera)
    projector.refresh(800, 400)
    expect(projector.project([0, 0, 0])).toMatchObject({ x: 400, y: 200, depth: 5, visible: true })
    const edge = projector.project([0.3, 5 * HALF_HEIGHT, 0])
    expect(edge.y).toBeCloseTo(0, 6)
    expect(edge.x).toBeGreaterThan(400)
    expect(projector.project([0, 0, 2]).depth).toBeCloseTo(3, 12)
    expect(projector.project([0, 0, 7]).visible).toBe(false)
  })

  it("tells its listeners once for a change of camera or size and not without one", () => {
    const projector = createProjector(camera)
    let told = 0
    const stop = projector.subscribe(() => {
      told++
    })
    projector.refresh(800, 400)
    projector.refresh(800, 400)
    expect(told).toBe(1)
    camera.position.x = 0.2
    projector.refresh(800, 400)
    projector.refresh(820, 400)
    expect(told).toBe(3)
    stop()
    projector.refresh(830, 400)
    expect(told).toBe(3)
  })
})

describe("the big figures", () => {
  it("cover a corner of a wide picture that the bow keeps clear of", () => {
    const figures = figuresPlace(1040, false)
    expect(figures.box?.right).toBe(1040)
    expect(figures.box!.left / 1040).toBeCloseTo(1 - insetsFor(1040, 790, figures).right, 12)
  })

  it("cover the top of a narrower one, and nothing where they stand below it", () => {
    const figures = figuresPlace(684, false)
    expect(figures.box).toEqual({ left: 0, top: 0, right: 684, bottom: 168 })
    expect(insetsFor(684, 650, figures).top).toBeCloseTo(168 / 650, 12)
    expect(figuresPlace(390, true).box).toBeNull()
  })
})
