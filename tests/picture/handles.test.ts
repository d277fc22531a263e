import { describe, expect, it } from "vitest"
import { distance, subtract, unit } from "../../src/core/solids"
import type { Handle } from "../../src/picture/handle"
import { extenderSwitches } from "../../src/picture/extenders"
import { handlesOf } from "../../src/picture/handles"
import type { Scene } from "../../src/scene/schema"
import { slotNamed } from "../../src/scene/slots"
import { arm, discs, extender, fullDocument, rigged, rod, smallestDocument, swing, vbar } from "../scene/documents"
import { evaluationOf, sceneOf, turnedDocument } from "./pictures"

const handles = (scene: Scene): Handle[] => handlesOf(scene, evaluationOf(scene))
const named = (scene: Scene, key: string): Handle => {
  const found = handles(scene).find((handle) => handle.key === key)
  if (found === undefined) throw new Error(`no handle ${key}`)
  return found
}

/** The scene with one number set, as `setNumber` would set it. */
function having(scene: Scene, key: string, value: number): Scene {
  const copy = structuredClone(scene)
  let here = copy as unknown as Record<string | number, unknown>
  const address = slotNamed(scene, key)!.address
  for (const step of address.slice(0, -1)) here = here[step] as typeof here
  here[address.at(-1)!] = value
  return copy
}

const full = sceneOf(fullDocument())
/** What a drawn bow's string has. */
const ofString = ["pose:draw", "bow:nockHeightMm", "archer:elbowElevationDeg"]

describe("the handles of a scene", () => {
  it("stand on every length, stack, arm angle, swing stem and carried mount, from each mount outward", () => {
    expect(handles(full).map(({ key }) => key)).toEqual([
      "front/extender:lengthMm",
      "front/vbar/left:splayDeg",
      "front/vbar/left:droopDeg",
      "front/vbar/right:splayDeg",
      "front/vbar/right:droopDeg",
      "front/vbar/left/rod:lengthMm",
      "front/vbar/left/weights:count",
      "front/vbar/right/rod:lengthMm",
      "front/vbar/right/weights:count",
      "front/rod:lengthMm",
      "front/weights:count",
      "front/weights#2:count",
      "mounts/upper:atMm.up",
      "mounts/upper:atMm.forward",
      "mounts/upper:pitchDeg",
      "mounts/upper:yawDeg",
      "upper/weights:count",
      "mounts/lower:atMm.up",
      "mounts/lower:atMm.forward",
      "mounts/lower:pitchDeg",
      "mounts/lower:yawDeg",
      "lower/extender:lengthMm",
      "lower/weights:count",
      "mounts/back:atMm.up",
      "mounts/back:atMm.forward",
      "mounts/back:pitchDeg",
      "mounts/back:yawDeg",
      "back/extender:lengthMm",
      "back/swing:stemLengthMm",
      "pose:draw",
    ])
  })

  it("have names a coach would use", () => {
    const labels = new Map(handles(full).map(({ key, label }) => [key, label]))
    expect(labels.get("front/rod:lengthMm")).toBe("Front rod length")
    expect(labels.get("front/vbar/left:splayDeg")).toBe("Left arm splay")
    expect(labels.get("front/vbar/right/rod:lengthMm")).toBe("Right side rod length")
    expect(labels.get("front/weights:count")).toBe("Front weights")
    expect(labels.get("front/weights#2:count")).toBe("the brass ones")
    expect(labels.get("mounts/lower:atMm.up")).toBe("Lower mount height")
    expect(labels.get("back/swing:stemLengthMm")).toBe("Back swing weight stem length")
  })

  it("have different names even where parts were given one label", () => {
    const scene = sceneOf(rigged({ front: [rod({ label: "long" }), discs(), rod({ label: "long" })] }))
    expect(handles(scene).map(({ label }) => label)).toEqual(["long length", "Front weights", "long length 2", "Draw"])
    for (const other of [full, sceneOf(turnedDocument())]) {
      const labels = handles(other).map(({ label }) => label)
      expect(new Set(labels).size).toBe(labels.length)
    }
  })

  it("stand on the front mount and on a mount that carries nothing only while it is chosen", () => {
    const scene = sceneOf(rigged({ front: [rod()] }))
    const keys = (chosen: string | null) => handlesOf(scene, evaluationOf(scene), chosen).map(({ key }) => key)
    const always = ["front/rod:lengthMm", "pose:draw"]
    expect(keys(null)).toEqual(always)
    expect(keys("front/rod")).toEqual(always)
    expect(keys("mounts/front")).toEqual([
      "mounts/front:atMm.up",
      "mounts/front:atMm.forward",
      "mounts/front:pitchDeg",
      "mounts/front:yawDeg",
      ...always,
    ])
    expect(scene.mounts.lower).toBeDefined()
    expect(keys("mounts/lower")).toEqual([
      "front/rod:lengthMm",
      "mounts/lower:atMm.up",
      "mounts/lower:atMm.forward",
      "pose:draw",
    ])
  })

  it("do not turn a chain that is the same whichever way its mount points", () => {
    const scene = sceneOf(rigged({ lower: [discs({ count: 0 }), swing()] }))
    expect(handles(scene).map(({ key }) => key)).toEqual([
      "mounts/lower:atMm.up",
      "mounts/lower:atMm.forward",
      "lower/weights:count",
      "lower/swing:stemLengthMm",
      "pose:draw",
    ])
  })

  it("on a bow without a rig are the string's: the draw, and those of the line of pull once there is one", () => {
    const keys = (draw: number) => handles(sceneOf({ ...smallestDocument(), pose: { draw } })).map(({ key }) => key)
    expect(keys(0)).toEqual(["pose:draw"])
    expect(keys(0.01)).toEqual(ofString)
  })

  it("take value and range from the scene's own table", () => {
    for (const handle of handles(full)) {
      const slot = slotNamed(full, handle.key)!
      expect(handle.value).toBe(slot.value)
      expect(handle.field).toBe(slot.field)
    }
  })

  it("know the same number on the other arm", () => {
    expect(named(full, "front/vbar/left:droopDeg").twin).toBe("front/vbar/right:droopDeg")
    expect(named(full, "front/rod:lengthMm").twin).toBeNull()
    const lone = sceneOf(rigged({ front: [vbar({ left: arm(35, 12, [rod()]) })] }))
    expect(named(lone, "front/vbar/left:droopDeg").twin).toBeNull()
  })
})

describe("the place of a handle", () => {
  const scenes = { full, turned: sceneOf(turnedDocument()) }
  for (const [name, scene] of Object.entries(scenes)) {
    it(`foretells where the handle will be once the value is set (${name})`, () => {
      for (const handle of handles(scene)) {
        const { min, max, step } = handle.field
        const next = Math.min(max, Math.max(min, handle.value + 3 * step))
        const set = having(scene, handle.key, next)
        expect(distance(handle.place(next), named(set, handle.key).place(next)), handle.key).toBeLessThan(1e-12)
      }
    })

    it(`moves when the value does (${name})`, () => {
      for (const handle of handles(scene)) {
        const moved = distance(handle.place(handle.value), handle.place(handle.value + handle.field.step))
        expect(moved, handle.key).toBeGreaterThan(1e-4)
      }
    })
  }

  it("of a rod's length is the rod's far end, in metres", () => {
    // Front mount 43, extender 105, V-bar 33, rod 710.
    const [x, y, z] = named(full, "front/rod:lengthMm").place(710)
    expect(x).toBeCloseTo(0.891, 12)
    expect(y).toBeCloseTo(-0.071, 12)
    expect(z).toBeCloseTo(0.002, 12)
  })

  it("of an arm's droop is along the arm and of its splay nearer to the root", () => {
    const splay = named(full, "front/vbar/right:splayDeg")
    const droop = named(full, "front/vbar/right:droopDeg")
    const root = [0.043 + 0.105 + 0.0165, -0.071, 0.002] as const
    const far = subtract(droop.place(9), root)
    const near = subtract(splay.place(41), root)
    const along = unit(far)
    unit(near).forEach((component, axis) => {
      expect(component).toBeCloseTo(along[axis]!, 12)
    })
    expect(Math.hypot(...far) - Math.hypot(...near)).toBeGreaterThan(0.04)
    expect(near[0]).toBeLessThan(0)
    expect(near[1]).toBeLessThan(0)
    expect(near[2]).toBeGreaterThan(0)
  })

  it("of an empty arm's angles is far enough from the root to aim at", () => {
    const scene = sceneOf(rigged({ front: [vbar({ left: arm(35, 12, []) })] }))
    const root = [0.043 + 0.0165, -0.071, 0.002] as const
    for (const key of ["splayDeg", "droopDeg"]) {
      const handle = named(scene, `front/vbar/left:${key}`)
      expect(distance(handle.place(handle.value), root)).toBeGreaterThan(0.06)
    }
  })

  it("of a swing weight's stem is its bob's far end, where it hangs", () => {
    const scene = sceneOf({ ...rigged({ front: [rod(), swing()] }), pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
    const [x, y] = named(scene, "front/swing:stemLengthMm").place(170)
    expect(x).toBeCloseTo(0.753, 12)
    expect(y).toBeCloseTo(-0.241, 12)
  })
})

describe("the extender switches of a scene", () => {
  const of = (scene: Scene) => extenderSwitches(scene, evaluationOf(scene))

  it("stand one at the root of every chain and say what they do", () => {
    expect(of(full).map(({ path, present, label }) => [path, present, label])).toEqual([
      ["front", true, "Remove the extender, front"],
      ["front/vbar/left", false, "Add an extender, left arm"],
      ["front/vbar/right", false, "Add an extender, right arm"],
      ["upper", false, "Add an extender, upper"],
      ["lower", true, "Remove the extender, lower"],
      ["back", true, "Remove the extender, back"],
    ])
  })

  it("are switched with the other arm's only where both arms have one or neither has", () => {
    const left = of(full).find(({ path }) => path === "front/vbar/left")
    expect(left?.twin).toEqual(["rig", 0, "chain", 1, "right", "chain"])
    const uneven = sceneOf(rigged({ front: [vbar({ left: arm(35, 12, [extender()]), right: arm(35, 12, [rod()]) })] }))
    expect(of(uneven).map(({ twin }) => twin)).toEqual([null, null, null])
  })
})
