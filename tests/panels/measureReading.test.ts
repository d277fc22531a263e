import { describe, expect, test } from "vitest"
import { NO_DRAFTS, type ReadingDraft } from "../../src/panels/measure/drafts"
import { afterRemoval, editedPlace } from "../../src/panels/measure/editing"
import { draftOf, missing, OWN_POINT, readingOf } from "../../src/panels/measure/reading"
import { riserSpread } from "../../src/panels/measure/riserSpread"
import { fitScene, namedPoints } from "../../src/scene/measure"
import { fullDocument } from "../scene/documents"
import { measuredDocument } from "../scene/measure/documents"
import { evaluated, onBow, wholeSession } from "../scene/measure/sessions"
import { sceneOf } from "../scene/scenes"

const scene = sceneOf(fullDocument())
const points = namedPoints(scene, evaluated(scene))
const draft = (changes: Partial<ReadingDraft>): ReadingDraft => ({ ...NO_DRAFTS.reading, ...changes })
const read = (changes: Partial<ReadingDraft>, of = scene) => readingOf(draft(changes), of, points, "2026-05-17")

describe("a draft", () => {
  test("is a reading once its numbers are typed, with usual errors, today's date and the rig on the bow", () => {
    expect(missing(draft({}), points)).toEqual(["mass on the scale"])
    expect(read({ values: { massG: 2717 } })).toEqual({
      kind: "scale",
      massG: 2717,
      errorG: 3,
      on: "rigged",
      rig: scene.rig,
      excluded: false,
      note: "",
      date: "2026-05-17",
    })
  })

  test("of a hang takes the place of its named point, or the typed one", () => {
    const values = { slopeDeg: 7, cantDeg: -3 }
    const hang = draft({ kind: "hang", on: "bow", point: "mount/front", values })
    expect(missing(hang, points)).toEqual([])
    expect(readingOf(hang, scene, points, "")).toMatchObject({ atMm: scene.mounts.front!.atMm, ...values })
    expect(missing({ ...hang, point: OWN_POINT }, points)).toEqual(["the point"])
    expect(missing({ ...hang, point: "a rod that is off" }, points)).toEqual(["the point"])
    const own = { ...hang, point: OWN_POINT, values: { ...values, at0: 2, at1: 3, at2: 5 } }
    expect(readingOf(own, scene, points, "")).toMatchObject({ atMm: [2, 3, 5] })
  })

  test("of a hang whose cant was not read has none", () => {
    const hang = draft({ kind: "hang", cantRead: false, point: "grip", values: { slopeDeg: 7 } })
    expect(missing(hang, points)).toEqual([])
    expect(readingOf(hang, scene, points, "")).not.toHaveProperty("cantDeg")
  })
})

test("every kind of reading, taken up and kept as it is, is the same reading", () => {
  const measured = sceneOf(measuredDocument())
  measured.measurements!.forEach((reading, place) => {
    const again = draft(draftOf(reading, place))
    expect(missing(again, points)).toEqual([])
    expect(readingOf(again, measured, points, "other")).toEqual(reading)
  })
})

describe("a reading that is being changed", () => {
  const { measurements = [] } = sceneOf(measuredDocument())
  const editing = { place: 2, was: measurements[2]! }

  test("is the one in its place, whether it counts or not, and none once another one is there", () => {
    expect(editedPlace(editing, measurements)).toBe(2)
    expect(
      editedPlace(
        editing,
        measurements.map((each) => ({ ...each, excluded: false })),
      ),
    ).toBe(2)
    expect(editedPlace(editing, measurements.slice(1))).toBeNull()
    expect(editedPlace(editing, undefined)).toBeNull()
    expect(editedPlace(null, measurements)).toBeNull()
  })

  test("moves up with its list and goes with its entry", () => {
    expect(afterRemoval(editing, 0)).toEqual({ ...editing, place: 1 })
    expect(afterRemoval(editing, 3)).toBe(editing)
    expect(afterRemoval(editing, 2)).toBeNull()
  })
})

test("a reading of another rig than the one on the bow keeps it, until the present one is chosen", () => {
  const measured = sceneOf(measuredDocument())
  const then = draft(draftOf(measured.measurements![2]!, 2))
  expect(readingOf({ ...then, words: { ...then.words, rig: "now" } }, measured, points, "").rig).toEqual(measured.rig)
})

test("a named point has a key of its own, and the string, the grip and the rods' ends are among them", () => {
  const keys = points.map(({ key }) => key)
  expect(new Set(keys).size).toBe(keys.length)
  expect(keys).toEqual(
    expect.arrayContaining(["grip", "nock", "string-top", "mount/front", "end/front", "end/front/vbar/left"]),
  )
})

test("the ± of a radius of gyration is that of its square, whichever side is wider", () => {
  const made = fitScene({ ...scene, measurements: wholeSession(scene, onBow) })
  if (made === null || !made.ok) throw new Error("no fit")
  const fit = made.value
  const yaw = Math.sqrt(fit.body.squares[1]) * 1e3
  const spread = riserSpread(fit, "yaw")
  expect(spread).toBeGreaterThan(1)
  expect(spread).toBeLessThanOrEqual(yaw + 1e-9)
  expect(riserSpread(fit, "mass")).toBeGreaterThan(5)
  expect(riserSpread(fit, "forward")).toBeGreaterThan(1)
})
