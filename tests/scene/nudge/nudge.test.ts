import { describe, expect, test } from "vitest"
import { angularMomentum } from "../../../src/core/nudge"
import { aboutAxis, distance } from "../../../src/core/solids"
import type { Evaluation } from "../../../src/scene/evaluate"
import {
  anglesAt,
  type HandHold,
  heldBy,
  landingOf,
  noseDrops,
  nudgeFields,
  nudgeTrace as tracedOf,
  type NudgeQuestion,
  quickTensor,
  SAMPLE_S,
  stringHold,
  WATCHED_S,
} from "../../../src/scene/nudge"
import { expectTensor } from "../../core/near"
import { evaluationOf, sceneOf } from "../../picture/pictures"
import { arm, discs, type Document, recurveBow, rigged, rod, smallestDocument, swing, vbar } from "../documents"
import { recurveDocument } from "../scenes"

const made = (document: Document): Evaluation => evaluationOf(sceneOf(document))
const recurve = (chains: Parameters<typeof rigged>[0], more: Document = {}) =>
  made(rigged(chains, { bow: recurveBow(), ...more }))

const sided = recurve({ front: [vbar({ left: arm(35, 12, [rod({ lengthMm: 250 }), discs()]) }), rod(), discs()] })
/** Everything in the bow's own plane. */
const flatBow: Document = {
  ...recurveBow(),
  riser: { massG: 1230, centreMm: [11, -5, 0], gyrationMm: [150, 45, 152] },
}
const even = recurve(
  { front: [rod(), discs({ count: 3 })] },
  { bow: flatBow, mounts: { front: { atMm: [43, -71, 0] } } },
)

function nudgeTrace(evaluation: Evaluation, question: NudgeQuestion) {
  const trace = tracedOf(evaluation, question)
  if (!trace.ok) throw new Error(trace.errors[0]?.message)
  return trace.value
}

const asked = (more: Partial<NudgeQuestion> = {}): NudgeQuestion => ({
  kind: "knock",
  motion: "yaw",
  impulse: 0.013,
  push: 0.31,
  lastingS: 0.117,
  hold: "free",
  ...more,
})

describe("turn resistance to a nudge", () => {
  test("without a swing weight is the drawn bow's own", () => {
    expectTensor(quickTensor(sided.fullDraw), sided.fullDraw.aboutOrigin)
  })

  test("with free ones, on hinges and balls, counts them in pitch as the balance sheet does", () => {
    const hung = recurve(
      { back: [swing()], lower: [swing({ joint: "ball", stemLengthMm: 90 })], front: [rod()] },
      { pose: { draw: 0.35, slopeDeg: 13, cantDeg: 0 } },
    )
    const tensor = quickTensor(hung.now)
    expect(tensor.zz).toBeCloseTo(hung.pitchInertiaFree!, 12)
    // A hinge gives way in its own plane only; a ball gives way across too.
    expect(aboutAxis(tensor, [1, 0, 0])).toBeLessThan(hung.now.aboutOrigin.xx)
    const hinged = recurve({ back: [swing()] })
    expect(quickTensor(hinged.now).xx).toBeCloseTo(hinged.now.aboutOrigin.xx, 5)
    expect(quickTensor(hinged.now).zz).toBeLessThan(hinged.now.aboutOrigin.zz - 1e-4)
  })

  test("counts a swing weight on its stop as fixed", () => {
    const stopped = recurve({ back: [swing({ stopDeg: 5 })] }, { pose: { draw: 0, slopeDeg: 40, cantDeg: 0 } })
    expectTensor(quickTensor(stopped.now), stopped.now.aboutOrigin)
  })
})

describe("a bow nudged at full draw", () => {
  test("held by nothing keeps the angular momentum it was given, for as long as it is followed", () => {
    const { angles, rates, step } = nudgeTrace(sided, asked({ motion: "pitch" }))
    expect([step, angles.length]).toEqual([SAMPLE_S, Math.round(WATCHED_S / SAMPLE_S) + 1])
    const momentum = angularMomentum(sided.fullDraw.aboutOrigin, rates.at(-1)!)
    expect(momentum[0]).toBeCloseTo(0, 14)
    expect(momentum[1]).toBeCloseTo(0, 14)
    expect(momentum[2]).toBeCloseTo(0.013, 14)
  })

  test("turns about other axes too when one side carries more, and with even sides pitches alone", () => {
    const [, yaw, pitch] = nudgeTrace(sided, asked({ motion: "pitch" })).angles.at(-1)!
    expect(Math.abs(yaw)).toBeGreaterThan(Math.abs(pitch) / 1000)
    const [evenRoll, evenYaw, evenPitch] = nudgeTrace(even, asked({ motion: "pitch" })).angles.at(-1)!
    expect(evenPitch).toBeCloseTo(0.013 / even.fullDraw.aboutOrigin.zz, 12)
    expect([evenRoll, evenYaw].map(Math.abs)).toEqual([expect.closeTo(0, 15), expect.closeTo(0, 15)])
  })

  test("under a push is at ½·(τ/I)·t² when the push ends", () => {
    const trace = nudgeTrace(even, asked({ kind: "push", motion: "pitch", lastingS: 0.2 }))
    const [, , pitch] = anglesAt(trace, 0.2)
    expect(pitch).toBeCloseTo((0.31 / even.fullDraw.aboutOrigin.zz) * 0.02, 12)
  })

  test("sends its arrow, worked by hand, where it points when the arrow leaves", () => {
    // 0.013 N·m·s on I kg·m²: it turns to the left by 0.013/I·0.02 rad in 20 ms, and 70 m on that is 70 times as much.
    const free = quickTensor(even.fullDraw)
    const own = free.yy - free.xy ** 2 / free.xx
    const { right, up } = landingOf(nudgeTrace(even, asked()), 0.02, 70)
    expect(right).toBeCloseTo(-70 * (0.013 / own) * 0.02, 5)
    expect(up).toBeCloseTo(0, 12)
  })
})

test("a bow of points in one line cannot be nudged, but its front can drop", () => {
  const thin = made({
    ...smallestDocument(),
    bow: {
      ...(smallestDocument().bow as Document),
      riser: { massG: 1700, centreMm: [0, 7, 0], gyrationMm: [0, 0, 0] },
      limbs: { massG: 310, centreMm: [0, 340], drawnShiftMm: [0, 0] },
      string: { massG: 0 },
      arrow: { massG: 0, lengthMm: 730 },
    },
  })
  const refused = tracedOf(thin, asked())
  expect(refused.ok ? "" : refused.errors[0]!.path).toBe("bow.riser.gyrationMm")
  expect(noseDrops([thin]).ok).toBe(true)
})

test("the turn between two samples lies on the straight line through them, and past the last it stays", () => {
  const trace = { step: 0.1, angles: [[0, 2, 0] as const, [3, 5, 7] as const], rates: [] }
  expect(anglesAt(trace, 0.025)).toEqual([0.75, 2.75, 1.75])
  expect(anglesAt(trace, 3)).toEqual([3, 5, 7])
  expect(anglesAt(trace, -1)).toEqual([0, 2, 0])
})

describe("holds", () => {
  test("by the string are 2·T·L²/ℓ of this bow's tension, draw and string, against pitch and yaw alone", () => {
    const { limbs } = even.fullDraw
    const nock = [-0.665, 0.047, 0] as const
    const [up, down] = limbs.stringEnds.map((end) => distance(nock, end))
    const wanted = (2 * limbs.stringTension! * 0.665 ** 2) / ((up! + down!) / 2)
    const hold = stringHold(even)!
    expect(hold.pitch).toBeCloseTo(wanted, 9)
    expect(hold).toMatchObject({ yaw: hold.pitch, roll: 0 })
  })

  test("by the string do not exist on a compound, whose cables are not modelled", () => {
    expect(stringHold(made(smallestDocument()))).toBeNull()
  })

  test("with numbers are those numbers, on every bow", () => {
    const own: HandHold = { pitch: 3, yaw: 5, roll: 7, damping: 0.2 }
    expect(heldBy(own, even)).toBe(own)
    expect(heldBy("free", even)).toEqual({ pitch: 0, yaw: 0, roll: 0, damping: 0 })
    expect(heldBy("string", even)).toEqual(stringHold(even))
  })

  test("by name are within the ranges of their fields", () => {
    for (const choice of ["free", "string", "loose"] as const) {
      const hold = heldBy(choice, even)
      for (const key of ["pitch", "yaw", "roll", "damping"] as const) {
        expect(hold[key]).toBeGreaterThanOrEqual(nudgeFields[key].min)
        expect(hold[key]).toBeLessThanOrEqual(nudgeFields[key].max)
      }
    }
  })
})

describe("the nose drop after the shot", () => {
  const dropped = (...evaluations: Evaluation[]) => {
    const drops = noseDrops(evaluations)
    if (!drops.ok) throw new Error(drops.errors[0]?.message)
    return drops.value
  }

  test("is that of the bow let down, level and without its arrow, whatever pose it is held in", () => {
    const [drop] = dropped(made(recurveDocument(0.7)))
    const level = made({ ...recurveDocument(0), pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
    expect(drop!.bow.noseDown).toBeCloseTo(level.now.noseDown, 10)
    expect(drop!.bow.pitchInertia).toBeCloseTo(level.pitchInertiaFree!, 10)
    const [, , pitch] = anglesAt(drop!.trace, 0.2)
    expect(pitch).toBeCloseTo((-level.now.noseDown / level.pitchInertiaFree!) * 0.02, 10)
  })

  test("is followed for both bows until the faster one is at 30°, and never beyond", () => {
    const heavy = recurve({ front: [rod(), discs({ count: 20 })] })
    const [first, second] = dropped(even, heavy)
    expect(first!.trace.angles.length).toBe(second!.trace.angles.length)
    const ends = [first!, second!].map(({ trace }) => Math.abs(trace.angles.at(-1)![2]))
    expect(Math.max(...ends)).toBeLessThanOrEqual(Math.PI / 6)
    expect(Math.max(...ends)).toBeGreaterThan(0.98 * (Math.PI / 6))
  })
})
