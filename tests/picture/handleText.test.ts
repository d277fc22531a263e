import { describe, expect, it } from "vitest"
import { armFields, bowFields, elementFields, type NumberField } from "../../src/scene/fields"
import { type Handle, snap } from "../../src/picture/handle"
import { handlesOf } from "../../src/picture/handles"
import { changeText, limitText, tipEffect, tipText, valueAndEffect, valueText } from "../../src/picture/handleText"
import type { Evaluation } from "../../src/scene/evaluate"
import { recurveBow, smallestDocument } from "../scene/documents"
import { evaluationOf, sceneOf } from "./pictures"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const inches = { ...metric, lengthUnit: "in" } as const
const length = elementFields.rod.lengthMm

const scene = sceneOf({ ...smallestDocument(), bow: recurveBow(), pose: { draw: 0.5 } })
const here = evaluationOf(scene)
const handleOf = (key: string, at = here): Handle => handlesOf(at.scene, at).find((handle) => handle.key === key)!

/** A handle on some number; its place is of no matter. */
const handle = (field: NumberField, value: number, twin: string | null = null): Handle => ({
  key: "front/rod:lengthMm",
  kind: "length",
  label: "Front rod length",
  field,
  value,
  place: () => [0, 0, 0],
  hub: null,
  owner: "front/rod",
  seen: "side",
  lifts: false,
  twin,
})

const balancedAt = (forwardMm: number): Evaluation => ({
  ...here,
  now: { ...here.now, centre: [forwardMm / 1e3, 0, 0] },
})

describe("a handle's words", () => {
  it("give the value with its unit and no idle zeros", () => {
    expect(valueText(handle(length, 720), metric)).toBe("720\u00a0mm")
    expect(valueText(handle(length, 711.2), inches)).toBe("28\u00a0in")
    expect(valueText(handle(armFields.droopDeg, -12), metric)).toBe("\u221212°")
    expect(valueText(handle(elementFields.weights.count, 5), metric)).toBe("5 discs")
    expect(valueText(handle(elementFields.weights.count, 1), metric)).toBe("1 disc")
  })

  it("give the draw as a length and as its part of the way", () => {
    const { braceHeightMm, drawLengthMm } = scene.bow
    const middle = (braceHeightMm + drawLengthMm) / 2
    expect(valueText(handleOf("pose:draw"), metric)).toBe(`${Math.round(middle)}\u00a0mm, 50\u00a0% drawn`)
    expect(valueText({ ...handleOf("pose:draw"), value: 0 }, metric)).toBe(`${braceHeightMm}\u00a0mm, at brace`)
    expect(valueText({ ...handleOf("pose:draw"), value: 1 }, metric)).toBe(`${drawLengthMm}\u00a0mm, full draw`)
  })

  it("say what the value does to the balance point", () => {
    const rod = handle(length, 720)
    expect(valueAndEffect(rod, balancedAt(63.6), metric)).toBe("720\u00a0mm; balance point 64\u00a0mm ahead")
    expect(valueAndEffect(rod, balancedAt(-2.3), metric)).toBe("720\u00a0mm; balance point 2\u00a0mm behind")
    expect(valueAndEffect(rod, balancedAt(-0.3), metric)).toBe("720\u00a0mm; balance point at the grip")
    expect(changeText(rod, balancedAt(63.6), inches)).toBe(
      "Front rod length 28.35\u00a0in. Balance point 2.5\u00a0in ahead.",
    )
  })

  it("say of elbow and nock what they do to the lift at full draw", () => {
    const lift = `${here.fullDraw.lift.toFixed(2).replace("-", "\u2212")}\u00a0N·m at full draw`
    const elbow = handleOf("archer:elbowElevationDeg")
    expect(valueAndEffect(elbow, here, metric)).toBe(`3°; lift ${lift}`)
    expect(changeText(elbow, here, metric)).toBe(`Draw elbow above the arrow line 3°. Lift ${lift}.`)
  })

  it("say that both arms move only where they do", () => {
    const paired = handle(armFields.splayDeg, 35, "front/vbar/right:splayDeg")
    expect(tipText(paired, true, metric)).toBe("35°, both arms")
    expect(tipText(paired, false, metric)).toBe("35°")
    expect(tipText({ ...paired, twin: null }, true, metric)).toBe("35°")
  })

  it("say at the ends of the range, and only there, that there is no more", () => {
    expect(limitText(handle(length, 720), 2000, metric)).toBe("No more than 2000\u00a0mm")
    expect(limitText(handle(elementFields.weights.count, 3), 0, metric)).toBe("No less than 0 discs")
    expect(limitText(handle(length, 720), 1999, metric)).toBeNull()
    expect(limitText(handleOf("pose:draw"), 1, metric)).toBeNull()
  })
})

describe("a tooltip's second line", () => {
  it("is what the fingers hold, for the draw, and nothing for what moves the balance point", () => {
    expect(tipEffect(handleOf("pose:draw"), here, null, metric)).toBe(
      `${here.now.limbs.holdForce.toFixed(1)}\u00a0N on the fingers`,
    )
    expect(tipEffect(handle(length, 720), here, null, metric)).toBe("")
  })

  it("is how the lift answers, and in mid-move how far it has changed", () => {
    const nock = handleOf("bow:nockHeightMm")
    expect(tipEffect(nock, here, null, metric)).toMatch(
      /^Each millimetre higher raises the lift by 0\.\d\d\u00a0N·m\.$/,
    )
    expect(tipEffect(nock, here, here, metric)).toBe(tipEffect(nock, here, null, metric))
    expect(tipEffect(handleOf("archer:elbowElevationDeg"), here, null, metric)).toMatch(/^Each degree higher lowers/)
    const raised = evaluationOf({ ...scene, bow: { ...scene.bow, nockHeightMm: scene.bow.nockHeightMm + 7 } })
    const more = raised.fullDraw.lift - here.fullDraw.lift
    expect(more).toBeGreaterThan(0.5)
    expect(tipEffect(nock, raised, here, metric)).toBe(`lift +${more.toFixed(2)}\u00a0N·m`)
  })
})

describe("snapping", () => {
  it("takes the nearest step", () => {
    expect(snap({ field: length }, 712.6, metric)).toBe(715)
    expect(snap({ field: length }, 712.4, metric)).toBe(710)
    expect(snap({ field: elementFields.weights.count }, 4.6, metric)).toBe(5)
    expect(snap({ field: armFields.splayDeg }, -7.4, metric)).toBe(-7)
    expect(Object.is(snap({ field: armFields.splayDeg }, -0.4, metric), 0)).toBe(true)
  })

  it("stays inside the range", () => {
    expect(snap({ field: length }, -30, metric)).toBe(1)
    expect(snap({ field: length }, 2503, metric)).toBe(2000)
  })

  it("leaves no binary dust on small steps", () => {
    expect(snap({ field: bowFields.arrowMassG }, 20.26, metric)).toBe(20.5)
    expect(snap({ field: { ...length, min: 0, step: 0.1 } }, 0.31, metric)).toBe(0.3)
  })

  it("steps in round inches where lengths are shown in inches", () => {
    const value = snap({ field: length }, 712, inches)
    expect(value / 25.4).toBeCloseTo(28, 9)
    expect(snap({ field: length }, 716, inches) / 25.4).toBeCloseTo(28.2, 9)
  })
})
