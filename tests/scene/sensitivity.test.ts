import { describe, expect, it } from "vitest"
import { evaluate } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import type { Scene } from "../../src/scene/schema"
import { type Sensitivity, sensitivities } from "../../src/scene/sensitivity"
import { type Slot, slotsOf } from "../../src/scene/slots"
import { withValues } from "../../src/scene/suggest/change"
import { fullDocument, rigged, smallestDocument, swing, type Document } from "./documents"
import { drawnCompound, hungDocument, posed, recurveDocument, sceneOf } from "./scenes"

/**
 * Steps of the differences, file units. Each shrinks by half; extrapolating the pair removes the step's square, so
 * what is left is about step⁴ of truncation and 1e-16·figure/step of rounding.
 */
const STEP = { length: 0.2, mass: 0.2, angle: 0.02, force: 0.1, count: 0.05, fraction: 1e-3, percent: 0.1 } as const
const stepOf = ({ field }: Slot): number => (STEP as Readonly<Record<string, number>>)[field.quantity] ?? 0.01

/**
 * Allowed error of each figure's rate, over the change of the figure that matters: 1 kg, 100 mm, 1 N·m, 0.1 kg·m²
 * per unit. Rounding of the evaluation over the step, about 1e-15/1e-3, sets it.
 */
const TOLERANCE = 3e-9

/** As above for differences to one side of a solved limb, over a step in which its bend is not quite straight. */
const FIRST_OF_DRAW_TOLERANCE = 1e-7

function figuresAt(scene: Scene): number[] {
  const evaluated = evaluate(scene)
  if (!evaluated.ok) throw new Error(evaluated.errors[0]?.message)
  const f = figuresOf(evaluated.value)
  const { netLiftNm, balancedForwardMm, liftNm } = f.fullDraw
  const turning = [f.inertiaGrip[2][2], f.inertiaGrip[0][0], f.inertiaGrip[1][1]].map((inertia) => inertia * 10)
  const lengths = [...f.centreMm, balancedForwardMm].map((mm) => mm / 100)
  return [f.massG / 1000, ...lengths, f.noseDownNm, f.cantRightNm, ...turning, netLiftNm, liftNm]
}

const flat = (s: Sensitivity): number[] => [
  s.massG / 1000,
  ...[...s.centreMm, s.fullDraw.balancedForwardMm].map((mm) => mm / 100),
  s.noseDownNm,
  s.cantRightNm,
  ...[s.inertiaGrip.pitch, s.inertiaGrip.roll, s.inertiaGrip.yaw].map((inertia) => inertia * 10),
  s.fullDraw.netLiftNm,
  s.fullDraw.liftNm,
]

/** Fourth-order central difference of all figures. */
function differences(scene: Scene, slot: Slot): number[] {
  const h = stepOf(slot)
  const at = (steps: number) => figuresAt(withValues(scene, [{ key: slot.key, value: slot.value + steps * h }]))
  const [a, b, c, d] = [at(-1), at(-0.5), at(0.5), at(1)] as const
  return a.map((_, i) => (8 * (c[i]! - b[i]!) - (d[i]! - a[i]!)) / (6 * h))
}

/** The same from the slot's value upward only, with the fourth order: for kinks and for what starts at zero. */
function upwardDifferences(scene: Scene, slot: Slot): number[] {
  const h = stepOf(slot) / 4
  const at = (steps: number) => figuresAt(withValues(scene, [{ key: slot.key, value: slot.value + steps * h }]))
  const [a, b, c, d, e] = [at(0), at(1), at(2), at(3), at(4)] as const
  return a.map((_, i) => (-25 * a[i]! + 48 * b[i]! - 36 * c[i]! + 16 * d[i]! - 3 * e[i]!) / (12 * h))
}

function expectRates(scene: Scene, key: string, wanted: (scene: Scene, slot: Slot) => number[], tolerance = TOLERANCE) {
  const slot = slotsOf(scene).find((candidate) => candidate.key === key)!
  const given = flat(ratesOf(scene).get(key)!)
  wanted(scene, slot).forEach((rate, i) => {
    const size = Math.max(1, Math.abs(rate))
    expect(Math.abs(given[i]! - rate) / size, `${key}, figure ${i}: ${given[i]} for ${rate}`).toBeLessThan(tolerance)
  })
}

function ratesOf(scene: Scene) {
  const evaluated = evaluate(scene)
  if (!evaluated.ok) throw new Error(evaluated.errors[0]?.message)
  return sensitivities(scene, evaluated.value)
}

const scenes: readonly (readonly [string, () => Document])[] = [
  ["a bow with an empty rig", smallestDocument],
  ["a rig with every part, at brace on a slope", fullDocument],
  ["the same partly drawn, canted, downhill", drawnCompound],
  ["swing weights of both joints, free and on their stops", hungDocument],
  ["a recurve at brace", () => recurveDocument(0)],
  ["a recurve half drawn", () => recurveDocument(0.45)],
  ["a recurve fully drawn, which may be drawn further", () => recurveDocument(1)],
  ["a recurve whose string lies on its limbs", () => recurveDocument(0.02, true)],
]

describe.each(scenes)("sensitivities of %s", (_, document) => {
  const scene = sceneOf(document())
  const slots = slotsOf(scene).filter(({ owner }) => owner !== "target")

  it("has an entry for every slot but the target's", () => {
    expect([...ratesOf(scene).keys()]).toEqual(slots.map(({ key }) => key))
  })

  // The draw at brace is a kink, tested on its own.
  const smooth = slots.filter(({ key }) => key !== "pose:draw" || scene.pose.draw > 0)
  it.each(smooth.map(({ key }) => key))("are the derivatives of all figures by %s", (key) => {
    expectRates(scene, key, differences)
  })
})

describe("where a figure has a kink", () => {
  it("the draw at brace counts string and limbs but not the jump of the arrow", () => {
    const document = fullDocument()
    const bow = smallestDocument().bow as Document
    const weightless = sceneOf({ ...document, bow: { ...bow, arrow: { massG: 0, lengthMm: 730 } } })
    expectRates(weightless, "pose:draw", upwardDifferences)
    const given = flat(ratesOf(weightless).get("pose:draw")!)
    // The arrow is not there yet at brace, so its mass makes no difference to these rates.
    const withArrow = flat(ratesOf(sceneOf(document)).get("pose:draw")!)
    expect(withArrow).toEqual(given)
  })

  it.each([false, true])("the draw of a recurve at brace is the first of its draw, string wrap %s", (stringWrap) => {
    const document = recurveDocument(0, stringWrap)
    const bow = { ...(document.bow as Document), arrow: { massG: 0, lengthMm: 730 } }
    expectRates(sceneOf({ ...document, bow }), "pose:draw", upwardDifferences, FIRST_OF_DRAW_TOLERANCE)
  })

  it.each(["hinge", "ball"])("a swing weight on a %s just at its stop is held when raised further", (joint) => {
    const level = sceneOf(posed(rigged({ back: [swing({ joint, stopDeg: 0 })] }), { draw: 0, slopeDeg: 0, cantDeg: 0 }))
    expectRates(level, "pose:slopeDeg", upwardDifferences)
    expectRates(level, "pose:cantDeg", upwardDifferences)
    expectRates(level, "back/swing:stopDeg", upwardDifferences)
  })
})
