import { expect, test } from "vitest"
import { swingMotions } from "../../../src/scene/hills"
import { validateScene } from "../../../src/scene/parse"
import { extender, rigged, swing } from "../documents"

const motions = (document: unknown) => {
  const read = validateScene(document)
  if (!read.ok) throw new Error(JSON.stringify(read.errors))
  return swingMotions(read.value)
}

test("each swing weight gets its joint's place, friction, damping and stop in SI", () => {
  const found = motions(
    rigged({
      lower: [swing({ joint: "ball" })],
      back: [extender({ lengthMm: 41 }), swing({ frictionNmm: 23, damping: 0.007 })],
    }),
  )
  expect(found.map(({ path }) => path)).toEqual(["lower/swing", "back/swing"])
  const { model, address } = found[1]!
  expect(address).toEqual(["rig", 1, "chain", 1])
  expect(model?.friction).toBeCloseTo(0.023, 15)
  expect(model?.damping).toBe(0.007)
  expect(model?.stop).toBeCloseTo((70 * Math.PI) / 180, 15)
  // The back mount at -17, -83 points straight back; the extender is 41 mm long.
  expect(model?.joint[0]).toBeCloseTo(-0.058, 12)
  expect(model?.joint[1]).toBeCloseTo(-0.083, 12)
  expect(model?.mass).toBeCloseTo(0.17, 12)
})

test("a ball canted past its stop has no motion, a hinge has", () => {
  const pose = { draw: 0, slopeDeg: 0, cantDeg: 29 }
  const rig = (joint: string) => rigged({ lower: [swing({ joint, stopDeg: 23 })] }, { pose })
  expect(motions(rig("ball"))[0]?.model).toBeNull()
  expect(motions(rig("hinge"))[0]?.model).not.toBeNull()
})

test("a bow without swing weights has none to move", () => {
  expect(motions(rigged({ lower: [extender()] }))).toEqual([])
})
