import { describe, expect, test } from "vitest"
import { GRAVITY } from "../../src/core/constants"
import { pendulumOf } from "../../src/core/swing"
import { swingWeight } from "../../src/scene/assemble"
import { type Evaluation, evaluate, fullDraw } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import { readScene } from "../../src/scene/parse"
import type { PartOf, Scene } from "../../src/scene/schema"
import { slopeSweep } from "../../src/scene/sweeps"
import { expectNear, expectTensor } from "../core/near"
import { discs, type Document, fullDocument, rigged, rod, smallestDocument, swing } from "./documents"

function read(document: Document): Scene {
  const result = readScene(document)
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}
function evaluated(document: Document) {
  const result = evaluate(read(document))
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}
const figures = (document: Document) => figuresOf(evaluated(document))
const posed = (draw: number, slopeDeg: number, cantDeg: number, base = fullDocument()): Document => ({
  ...base,
  pose: { draw, slopeDeg, cantDeg },
})

describe("the whole", () => {
  test("weighs its parts, and their moments are its moment", () => {
    const { massG, noseDownNm, parts } = figures(posed(0.7, 20, -5))
    expectNear([parts.reduce((sum, part) => sum + part.massG, 0)], [massG])
    expectNear([parts.reduce((sum, part) => sum + part.noseDownNm, 0)], [noseDownNm], 1e-12)
  })

  test("its tensors about grip and centre differ by the parallel-axis term", () => {
    const { massG, centreMm, inertiaGrip, inertiaCentre } = figures(fullDocument())
    const [x, y, z] = centreMm.map((mm) => mm * 1e-3) as [number, number, number]
    const m = massG * 1e-3
    expectNear([inertiaGrip[2][2] - inertiaCentre[2][2]], [m * (x * x + y * y)], 1e-12)
    expectNear([inertiaGrip[0][1] - inertiaCentre[0][1]], [-m * x * y], 1e-10)
    expectNear([inertiaGrip[1][2] - inertiaCentre[1][2]], [-m * y * z], 1e-10)
  })

  test("level and upright, the arms are the centre's own place", () => {
    const { centreMm, armForwardMm, armSideMm } = figures(posed(0, 0, 0))
    expectNear([armForwardMm, armSideMm], [centreMm[0], centreMm[2]])
  })

  test("stripped is the bow without its rig at the same pose, the rig's slope without effect on it", () => {
    const bare = figures({ ...posed(0.4, 10, 3), rig: [], mounts: {} })
    expect(figures(posed(0.4, 10, 3)).stripped).toEqual({
      massG: bare.massG,
      centreMm: bare.centreMm,
      inertiaGrip: bare.inertiaGrip,
    })
    expect(figures(posed(0.4, -30, 3)).stripped).toEqual(figures(posed(0.4, 10, 3)).stripped)
  })

  test("without a rig the stripped bow is the bow", () => {
    const { stripped, massG, centreMm, inertiaGrip } = figures(smallestDocument())
    expect(stripped).toEqual({ massG, centreMm, inertiaGrip })
  })
})

describe("full draw", () => {
  test("is level, drawn and uncanted whatever the pose", () => {
    expect(figures(posed(0, 0, 0)).fullDraw).toEqual(figures(posed(0.3, 33, -12)).fullDraw)
  })

  test("holds the compound's peak less its let-off", () => {
    const { fullDraw: drawn } = figures(smallestDocument())
    expectNear([drawn.holdForceN], [47 * 4.4482216152605 * 0.35])
    expectNear([figures(posed(1, 0, 0)).holdForceN], [drawn.holdForceN])
    expect(figures(smallestDocument()).holdForceN).toBe(0)
  })

  test("its lift is the line of pull's, from nock height, draw length and elbow", () => {
    const { fullDraw: drawn } = figures(fullDocument())
    const elbow = (2.5 * Math.PI) / 180
    expectNear([drawn.liftNm], [drawn.holdForceN * (0.053 * Math.cos(elbow) - 0.69 * Math.sin(elbow))])
    expectNear([drawn.netLiftNm], [drawn.liftNm - drawn.noseDownNm], 1e-12)
    expectNear([drawn.balancedForwardMm], [(drawn.liftNm / (drawn.massG * 1e-3 * GRAVITY)) * 1e3])
    expectNear([drawn.gripShiftMm], [(drawn.netLiftNm / drawn.holdForceN) * 1e3])
  })

  test("the slopes' quick way, limbs and lift taken from the level, is the whole evaluation at each slope", () => {
    const scene = read(fullDocument())
    const whole = evaluated(fullDocument())
    const sweep = slopeSweep(scene, whole)
    for (const { slopeDeg, noseDownNm, netLiftNm } of sweep) {
      const alone = fullDraw(scene, slopeDeg)
      if (!alone.ok) throw new Error("no full draw")
      expectNear([noseDownNm, netLiftNm], [alone.value.noseDown, alone.value.netLift])
    }
    const posedDown = figures(posed(1, -35, 0))
    expectNear([sweep.find((row) => row.slopeDeg === -35)!.noseDownNm], [posedDown.noseDownNm])
  })
})

describe("a swing weight", () => {
  const hinged = (more: Document = {}, pose: Document = {}) =>
    rigged({ back: [rod({ lengthMm: 100 }), swing(more)] }, { pose })

  test("off its stops is reported with pitch resistance locked and free, the free one smaller below the grip", () => {
    const { inertiaGrip, pitchInertiaFree } = figures(hinged())
    expect(pitchInertiaFree).toBeLessThan(inertiaGrip[2][2])
  })

  test("free, level: its hinge's x² with the whole mass, its hinge's y² with the part that follows", () => {
    const scene = read(hinged())
    const weight = scene.rig[0]!.chain[1] as PartOf<"swing">
    const { mass, arm, acrossCentre } = pendulumOf(swingWeight(weight))
    const across = (mass * acrossCentre) / (acrossCentre + mass * arm * arm)
    const without = figures(rigged({ back: [rod({ lengthMm: 100 })] })).inertiaGrip[2][2]
    expectNear([figures(hinged()).pitchInertiaFree!], [without + mass * 0.117 ** 2 + across * 0.083 ** 2], 1e-12)
  })

  test("on its stop counts as locked", () => {
    const { inertiaGrip, pitchInertiaFree } = figures(hinged({ stopDeg: 10 }, { slopeDeg: 30 }))
    expectNear([pitchInertiaFree!], [inertiaGrip[2][2]])
    const off = figures(hinged({ stopDeg: 40 }, { slopeDeg: 30 }))
    expect(off.pitchInertiaFree).toBeLessThan(off.inertiaGrip[2][2])
  })

  test("none: no free figure", () => {
    expect("pitchInertiaFree" in figures(smallestDocument())).toBe(false)
  })
})

test("a stack of no discs is a part of no mass in its place, and changes nothing else", () => {
  const [without, withNone] = [
    figures(rigged({ front: [rod()] })),
    figures(rigged({ front: [rod(), discs({ count: 0 })] })),
  ]
  expect(withNone.parts.at(-1)).toMatchObject({ path: "front/weights", massG: 0, noseDownNm: 0 })
  expectNear(withNone.parts.at(-1)!.centreMm, [753, -71, 2], 1e-12)
  expect({ ...withNone, parts: [] }).toEqual({ ...without, parts: [] })
})

test("principal moments are those of the tensor about the centre", () => {
  const { principal, now } = evaluated(fullDocument())
  expectNear(
    [principal.moments.reduce((a, b) => a + b)],
    [now.aboutCentre.xx + now.aboutCentre.yy + now.aboutCentre.zz],
  )
  expectTensor(now.aboutCentre, evaluated(posed(0, 15, 4)).now.aboutCentre)
})

test("while only the rig is edited, limbs and bare bow are the same objects, so that nobody draws or weighs them again", () => {
  const scene = read(fullDocument())
  const edited: Scene = { ...scene, rig: scene.rig.slice(1) }
  const [before, after] = [scene, edited].map((each) => {
    const result = evaluate(each)
    if (!result.ok) throw new Error(JSON.stringify(result.errors))
    return result.value
  }) as [Evaluation, Evaluation]
  expect(after.now.limbs).toBe(before.now.limbs)
  expect(after.fullDraw.limbs).toBe(before.fullDraw.limbs)
  expect(after.stripped).toBe(before.stripped)
  expect(after.now.mass).toBeLessThan(before.now.mass)
  const heavier = evaluate({ ...scene, bow: { ...scene.bow, riser: { ...scene.bow.riser, massG: 1703 } } })
  if (!heavier.ok) throw new Error(JSON.stringify(heavier.errors))
  expect(heavier.value.stripped.mass - before.stripped.mass).toBeCloseTo(1.703 - scene.bow.riser.massG / 1e3, 12)
})
