import { describe, expect, test } from "vitest"
import { standing, vectorOf } from "../../../src/core/measure"
import { fitScene, type MeasuredFit, nextReadings, riserOf } from "../../../src/scene/measure"
import { assumedBody } from "../../../src/scene/measure/setup"
import { validateScene } from "../../../src/scene/parse"
import type { Measurement, Scene } from "../../../src/scene/schema"
import { expectNear } from "../../core/near"
import { discs, fullDocument, rigged, rod } from "../documents"
import { recurveDocument, sceneOf } from "../scenes"
import { hung, onBow, twisted, weighed, wholeSession, withRig } from "./sessions"

const found = (scene: Scene): MeasuredFit => {
  const made = fitScene(scene)
  if (made === null || !made.ok) throw new Error("no fit")
  return made.value
}
/** The scene with a riser nobody measured, and these readings of the real one. */
const unmeasured = (scene: Scene, measurements: Measurement[]): Scene => ({
  ...scene,
  bow: { ...scene.bow, riser: { massG: 1400, centreMm: [0, 0, 0], gyrationMm: [150, 60, 150] } },
  measurements,
})
const riserNumbers = ({ massG, centreMm, gyrationMm }: Scene["bow"]["riser"]) => [massG, ...centreMm, ...gyrationMm]

describe("a measured bow", () => {
  test.each<[string, Scene]>([
    ["a compound", sceneOf(fullDocument())],
    ["a recurve", sceneOf(recurveDocument(0))],
  ])("%s, read bare or rigged, has its riser back whatever was assumed", (_, scene) => {
    for (const on of [onBow, withRig(scene)]) {
      const fit = found(unmeasured(scene, wholeSession(scene, on)))
      expect(fit).toMatchObject({ converged: true, applied: false })
      const truth = vectorOf(assumedBody(scene))
      vectorOf(fit.body).forEach((value, k) => {
        // What the readings place is back to the last digit; the rest is off by no more than is said.
        const { known, spread } = standing(
          fit,
          truth.map((_, i) => (i === k ? 1 : 0)),
        )
        const off = Math.abs(value - truth[k]!)
        if (fit.undetermined.length === 0) expect(off).toBeLessThan(1e-7)
        else expect(off).toBeLessThan(spread)
        if (on === onBow) expect(known).toBe("yes")
      })
    }
  })

  test("keeps its readings when its rig is changed afterwards", () => {
    const scene = sceneOf(rigged({ front: [rod(), discs()] }))
    const session = wholeSession(scene, withRig(scene))
    const changed = { ...unmeasured(scene, session), rig: [] }
    expectNear(riserNumbers(riserOf(found(changed))), riserNumbers(scene.bow.riser), 1e-6)
  })

  test("is applied once the scene has the fitted riser, and no longer when that is changed", () => {
    const scene = unmeasured(sceneOf(fullDocument()), wholeSession(sceneOf(fullDocument()), onBow))
    const riser = riserOf(found(scene))
    const applied: Scene = { ...scene, bow: { ...scene.bow, riser } }
    expect(found(applied).applied).toBe(true)
    expect(validateScene(applied)).toMatchObject({ ok: true })
    const heavier = { ...applied, bow: { ...applied.bow, riser: { ...riser, massG: riser.massG + 1 } } }
    expect(found(heavier).applied).toBe(false)
  })
})

test("excluded readings do not count, and without any other there is no fit", () => {
  const scene = sceneOf(fullDocument())
  const [weight, ...others] = wholeSession(scene, onBow)
  const wrong: Measurement = { ...(weight as Extract<Measurement, { kind: "scale" }>), massG: 9000, excluded: true }
  const { places, known } = found(unmeasured(scene, [wrong, ...others]))
  expect(places).toEqual([1, 2, 3, 4, 5, 6])
  expect(known[0]).not.toBe("yes")
  expect(fitScene({ ...scene, measurements: [wrong] })).toBeNull()
  expect(fitScene(scene)).toBeNull()
})

test("a reading whose rig hung from a mount that is no more does not count", () => {
  const scene = sceneOf(rigged({ front: [rod(), discs()] }))
  const session = wholeSession(scene, withRig(scene))
  const { front: _, ...others } = scene.mounts
  const unmounted = { ...scene, rig: [], mounts: others, measurements: [...session, weighed(scene, onBow)] }
  expect(found(unmounted).places).toEqual([session.length])
  expect(fitScene({ ...unmounted, measurements: session })).toBeNull()
})

test("the answer is kept while only the rig changes, and asked anew when a reading does", () => {
  const scene = unmeasured(sceneOf(fullDocument()), wholeSession(sceneOf(fullDocument()), onBow))
  const first = fitScene(scene)
  expect(fitScene({ ...scene, rig: [] })).toBe(first)
  expect(fitScene({ ...scene, measurements: scene.measurements!.slice(1) })).not.toBe(first)
})

test("limbs that cannot be strung are the reason there is no fit", () => {
  const scene = sceneOf(recurveDocument(0))
  const bow = { ...scene.bow, braceHeightMm: 499, drawLengthMm: 510 }
  const made = fitScene({ ...scene, bow, measurements: [weighed(scene, onBow)] })
  expect(made).toMatchObject({ ok: false })
})

describe("what to measure next", () => {
  const scene = sceneOf(fullDocument())

  test("is to hang the bow or to weigh it, each with what it would bring, best first", () => {
    const { nowMm, determined, best } = nextReadings(scene, null)!
    expect(determined).toBe(false)
    expect(best.length).toBeGreaterThan(8)
    expect(best.map(({ spreadMm }) => spreadMm)).toEqual(best.map(({ spreadMm }) => spreadMm).sort((a, b) => a - b))
    for (const { spreadMm } of best) expect(spreadMm).toBeLessThanOrEqual(nowMm * (1 + 1e-9))
    expect(best[0]!.kind).toBe("hang")
  })

  test("is to hang it from somewhere else once it has hung from one point", () => {
    const first = nextReadings(scene, null)!.best[0]!.point!
    const seen = [weighed(scene, withRig(scene)), hung(scene, withRig(scene), first.atMm)]
    const after = { ...scene, measurements: seen }
    const { nowMm, determined, best } = nextReadings(after, found(after))!
    expect(determined).toBe(false)
    const whole = { ...scene, measurements: [...seen, hung(scene, withRig(scene), best[0]!.point!.atMm)] }
    expect(nextReadings(whole, found(whole))!.determined).toBe(true)
    const again = best.find(({ point }) => point?.key === first.key)!
    expect(best[0]!.point!.key).not.toBe(first.key)
    expect(best[0]!.spreadMm).toBeLessThan(0.5 * again.spreadMm)
    expect(again.spreadMm).toBeLessThanOrEqual(nowMm)
  })

  test("is kept in the order in which the readings then really help", () => {
    const seen = [weighed(scene, withRig(scene)), twisted(scene, withRig(scene), "yaw")]
    const { best } = nextReadings({ ...scene, measurements: seen }, found({ ...scene, measurements: seen }))!
    const spreadAfter = (atMm: readonly [number, number, number]) => {
      const taken = { ...scene, measurements: [...seen, hung(scene, withRig(scene), atMm)] }
      return nextReadings(taken, found(taken))!.nowMm
    }
    const hangs = best.filter(({ kind }) => kind === "hang")
    expect(spreadAfter(hangs[0]!.point!.atMm)).toBeLessThan(spreadAfter(hangs.at(-1)!.point!.atMm))
  })
})
