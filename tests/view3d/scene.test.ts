import { describe, expect, it } from "vitest"
import type { Vec3 } from "../../src/core/solids"
import { evaluate } from "../../src/scene/evaluate"
import type { Scene } from "../../src/scene/schema"
import { newElement, newScene } from "../../src/scene/templates"
import { freePlace, overlap } from "../../src/view3d/labels"
import { targetZone } from "../../src/view3d/overlays/targetZone"
import { dimensionLevel, groundLevel, groundLine, reachPoints } from "../../src/view3d/reach"

function evaluated(change: (scene: Scene) => void) {
  const scene = newScene()
  change(scene)
  const result = evaluate(scene)
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}
const most = (points: readonly Vec3[], axis: 0 | 1 | 2) => Math.max(...points.map((point) => point[axis]))

describe("what the camera must show", () => {
  it("reaches to the end of a rod and of a swing weight", () => {
    const rod = evaluated((scene) => scene.rig.push({ mount: "front", chain: [{ ...newElement.rod, lengthMm: 930 }] }))
    expect(most(reachPoints(rod), 0)).toBeCloseTo(0.04 + 0.93, 9)
    const swing = evaluated((scene) => {
      scene.mounts.lower = { atMm: [40, -900, 0], pitchDeg: 0, yawDeg: 0 }
      scene.rig.push({ mount: "lower", chain: [{ ...newElement.swing }] })
    })
    expect(Math.min(...reachPoints(swing).map(([, y]) => y))).toBeCloseTo(-1.02, 9)
  })

  it("has room for the nock at full draw, however far the bow is drawn, and for the line of pull once it is", () => {
    const back = (draw: number) => {
      const held = evaluated((scene) => {
        scene.pose.draw = draw
      })
      return Math.min(...reachPoints(held).map(([x]) => x))
    }
    expect(back(0)).toBeCloseTo(-0.665, 9)
    expect(back(0.3)).toBeCloseTo(-0.665, 9)
    expect(back(1)).toBeCloseTo(-0.665 - 0.15 * Math.cos((3 * Math.PI) / 180), 9)
  })

  it("turns with the bow: a rod raised by the slope reaches higher", () => {
    const rod = (slopeDeg: number) =>
      evaluated((scene) => {
        scene.pose.slopeDeg = slopeDeg
        scene.rig.push({ mount: "front", chain: [{ ...newElement.rod, lengthMm: 1930 }] })
      })
    expect(most(reachPoints(rod(30)), 1)).toBeCloseTo(1.97 * 0.5 - 0.07 * Math.cos(Math.PI / 6), 9)
    expect(most(reachPoints(rod(0)), 1)).toBeLessThan(0.95)
  })

  it("includes the corners of an accessory's box", () => {
    const sight = evaluated((scene) =>
      scene.accessories.push({ name: "sight", massG: 200, centreMm: [120, 130, -30], sizeMm: [1500, 70, 50] }),
    )
    expect(most(reachPoints(sight), 0)).toBeCloseTo(0.87, 9)
  })
})

describe("the ground", () => {
  it("lies below everything and moves in steps, not with every small change", () => {
    expect(groundLevel([[0, -0.83, 0]])).toBeLessThan(-0.83)
    expect(groundLevel([[0, -0.832, 0]])).toBe(groundLevel([[0, -0.841, 0]]))
    expect(groundLevel([[0, -1.3, 0]])).toBeLessThan(groundLevel([[0, -0.83, 0]]))
    expect(groundLevel([])).toBeLessThan(0)
  })
  it("carries a line about as long as the bow reaches", () => {
    expect(groundLine([[0.93, 0, 0]]).to).toBeCloseTo(1, 12)
    expect(groundLine([]).to).toBeCloseTo(0.6, 12)
  })
})

describe("the target zone", () => {
  it("is the box of wanted places, open directions drawn at a readable size", () => {
    const zone = targetZone({ forwardMm: [30, 70], upMm: [-50, -20] })!
    expect(zone.centre[0]).toBeCloseTo(0.05, 12)
    expect(zone.size[0]).toBeCloseTo(0.04, 12)
    expect(zone.centre[1]).toBeCloseTo(-0.035, 12)
    expect(zone.size[1]).toBeCloseTo(0.03, 12)
    expect(zone.size[2]).toBeGreaterThan(0.05)
  })
  it("is still there when one exact place is wanted, and absent for a target without a place", () => {
    expect(targetZone({ sideMm: [5, 5] })!.size[2]).toBeGreaterThan(0)
    expect(targetZone({ massMaxG: 2300 })).toBeNull()
  })
})

describe("labels", () => {
  const frame = { left: 0, top: 0, right: 400, bottom: 300 }
  const label = { wish: { side: "right", look: "plain" } as const, width: 70, height: 20 }
  it("stand on the wished side, move to another where that is taken or outside, and give up where none is free", () => {
    const free = freePlace(200, 150, label, [], frame)!
    expect(free.left).toBeGreaterThan(200)
    const moved = freePlace(200, 150, label, [free], frame)!
    expect(overlap(moved, free)).toBe(false)
    expect(freePlace(390, 150, label, [], frame)!.right).toBeLessThan(390)
    expect(freePlace(200, 150, label, [frame], frame)).toBeNull()
  })
  it("that must be read stand further off where every near place is taken", () => {
    const crowd = { left: 110, top: 115, right: 240, bottom: 185 }
    expect(freePlace(200, 150, label, [crowd], frame)).toBeNull()
    const arm = { ...label, wish: { side: "right", look: "arm" } as const }
    expect(freePlace(200, 150, arm, [crowd], frame)!.left).toBeGreaterThan(240)
  })
})

describe("the moment arm's dimension line", () => {
  it("runs below the riser, below what hangs near the grip, and above the ground", () => {
    const bare = evaluated(() => {})
    expect(dimensionLevel(bare, -1)).toBeLessThan(0.02 - 0.29)
    const hanging = evaluated((scene) => {
      scene.mounts.lower = { atMm: [40, -150, 0], pitchDeg: -90, yawDeg: 0 }
      scene.rig.push({ mount: "lower", chain: [{ ...newElement.rod, lengthMm: 300 }] })
    })
    expect(dimensionLevel(hanging, -1)).toBeLessThan(-0.45)
    expect(dimensionLevel(hanging, -0.5)).toBeCloseTo(-0.42, 12)
  })
  it("does not dodge the far end of a rod", () => {
    const far = evaluated((scene) => {
      scene.mounts.front = { atMm: [40, -70, 0], pitchDeg: -70, yawDeg: 0 }
      scene.rig.push({ mount: "front", chain: [{ ...newElement.rod, lengthMm: 900 }] })
    })
    expect(dimensionLevel(far, -1.5)).toBeGreaterThan(-0.5)
  })
})
