import fc from "fast-check"
import { expect, test } from "vitest"
import { fullDraw } from "../../../src/scene/evaluate"
import { applyHang, flattestHang, type HangQuestion, hangSearch, hangPlaces, placesFor } from "../../../src/scene/hills"
import { betterHang, type Candidate } from "../../../src/scene/hills/candidate"
import { withoutSwings, withSwingAt } from "../../../src/scene/hills/place"
import { validateScene } from "../../../src/scene/parse"
import type { PartOf, Scene } from "../../../src/scene/schema"
import { arm, discs, extender, rigged, rod, swing, vbar } from "../documents"

const sceneOf = (document: unknown): Scene => {
  const read = validateScene(document)
  if (!read.ok) throw new Error(JSON.stringify(read.errors))
  return read.value
}

const unwrap = <T>(result: { ok: true; value: T } | { ok: false; errors: unknown }): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}

const field = sceneOf(
  rigged({
    front: [
      extender(),
      vbar({
        left: arm(35, 12, [rod({ massG: 57, lengthMm: 253 }), discs({ count: 2 })]),
        right: arm(35, 12, [rod({ massG: 57, lengthMm: 253 }), discs({ count: 2 })]),
      }),
      rod({ lengthMm: 530 }),
    ],
    back: [swing({ stemLengthMm: 90 }), extender({ lengthMm: 41 })],
  }),
)
const OLD = ["rig", 1, "chain", 0]
const template = (more: object = {}) =>
  ({ ...swing({ stopDeg: 23, ...more }), frictionNmm: 0, damping: 0 }) as unknown as PartOf<"swing">

const question = (more: Partial<HangQuestion> = {}): HangQuestion => ({
  swing: template(),
  moving: [OLD],
  ranges: { stemLengthMm: { from: 50, to: 200, step: 30 }, bobMassG: { from: 30, to: 210, step: 45 } },
  ...more,
})

/** The spread of net lift by assembling the whole bow anew on every slope: nothing shared with the search's sums. */
function spread(scene: Scene): { flatness: number; massG: number } {
  const drawn = Array.from({ length: 61 }, (_, index) => unwrap(fullDraw(scene, index - 30)))
  const lifts = drawn.map(({ netLift }) => netLift)
  return { flatness: Math.max(...lifts) - Math.min(...lifts), massG: drawn[0]!.mass * 1e3 }
}

const steps = ({ from, to, step }: { from: number; to: number; step: number }) => {
  const values: number[] = []
  for (let value = from; value <= to; value += step) values.push(value)
  return values
}

/** Every try, worst way round: build each bow, weigh it on each slope, sort. */
function enumerated(scene: Scene, asked: HangQuestion): Candidate[] {
  const base = withoutSwings(scene, asked.moving)
  const found: Candidate[] = []
  hangPlaces(base).forEach((place, index) => {
    for (const stemLengthMm of steps(asked.ranges.stemLengthMm)) {
      for (const bobMassG of steps(asked.ranges.bobMassG)) {
        const hung = withSwingAt(base, place, { ...asked.swing, stemLengthMm, bobMassG })
        found.push({ place: index, stemLengthMm, bobMassG, order: found.length, ...spread(hung) })
      }
    }
  })
  return found.sort(betterHang)
}

const names = (scene: Scene, asked: HangQuestion) => {
  const places = placesFor(scene, asked.moving)
  return ({ place, stemLengthMm, bobMassG }: Candidate) => `${places[place]!.path} ${stemLengthMm} ${bobMassG}`
}
const answerName = ({
  place,
  swing: { stemLengthMm, bobMassG },
}: {
  place: { path: string }
  swing: PartOf<"swing">
}) => `${place.path} ${stemLengthMm} ${bobMassG}`

test("it finds the same list as building and weighing every bow on every slope", () => {
  const asked = question({ count: 20 })
  const plain = enumerated(field, asked)
  const { best, complete, progress } = unwrap(flattestHang(field, asked))
  expect(complete).toBe(true)
  expect(progress).toEqual({ tried: plain.length, total: plain.length })
  expect(best.map(answerName)).toEqual(plain.slice(0, 20).map(names(field, asked)))
  best.forEach(({ flatness, massG }, index) => {
    expect(flatness).toBeCloseTo(plain[index]!.flatness, 11)
    expect(massG).toBeCloseTo(plain[index]!.massG, 8)
  })
})

test("for any small rig and ranges it finds the same list as plain enumeration", () => {
  const mm = (min: number, max: number) => fc.integer({ min, max })
  const rigs = fc.record({
    rodMm: mm(100, 900),
    droop: mm(-30, 60),
    discs: mm(0, 6),
    stop: mm(0, 60),
    joint: fc.constantFrom("hinge", "ball"),
    stem: mm(20, 300),
    stemStep: mm(7, 90),
    bob: mm(5, 300),
    bobStep: mm(11, 90),
    upperUp: mm(100, 300),
  })
  fc.assert(
    fc.property(rigs, (made) => {
      const scene = sceneOf(
        rigged({
          front: [rod({ lengthMm: made.rodMm }), discs({ count: made.discs })],
          back: [
            vbar({ left: arm(20, made.droop, [rod({ lengthMm: 211 })]), right: arm(20, made.droop, []) }),
            swing(),
          ],
        }),
      )
      const asked: HangQuestion = {
        swing: template({ stopDeg: made.stop, joint: made.joint }),
        moving: [["rig", 1, "chain", 1]],
        ranges: {
          stemLengthMm: { from: made.stem, to: made.stem + 2 * made.stemStep, step: made.stemStep },
          bobMassG: { from: made.bob, to: made.bob + made.bobStep, step: made.bobStep },
        },
        count: 7,
      }
      const wanted = enumerated(scene, asked).slice(0, 7).map(names(scene, asked))
      expect(unwrap(flattestHang(scene, asked)).best.map(answerName)).toEqual(wanted)
    }),
    { seed: 2357, numRuns: 25 },
  )
})

test("an answer applied to the scene is a valid one with the flatness and mass it promised", () => {
  const { best, bestByPlace } = unwrap(flattestHang(field, question()))
  expect(best).toHaveLength(5)
  for (const hang of [...best, ...bestByPlace]) {
    const tried = applyHang(field, hang)
    expect(validateScene(tried).ok).toBe(true)
    expect(spread(tried).flatness).toBeCloseTo(hang.flatness, 11)
    expect(spread(tried).massG).toBeCloseTo(hang.massG, 8)
    expect(hang.slopes.free.flatness).toBeCloseTo(hang.flatness, 11)
  }
})

test("the best of each place names every place once, the flattest first", () => {
  const { best, bestByPlace, now } = unwrap(flattestHang(field, question()))
  expect(bestByPlace.map(({ place }) => place.path).sort()).toEqual(
    placesFor(field, [OLD])
      .map(({ path }) => path)
      .sort(),
  )
  expect(answerName(bestByPlace[0]!)).toBe(answerName(best[0]!))
  expect(now.free.flatness).toBeCloseTo(spread(field).flatness, 11)
  expect(best[0]!.flatness).toBeLessThan(now.free.flatness)
})

test("places are chain ends, both arms of a V-bar together, and mounts that carry nothing", () => {
  expect(placesFor(field, []).map(({ path, ends }) => [path, ends.length])).toEqual([
    ["front", 1],
    ["front/vbar/left", 1],
    ["front/vbar/right", 1],
    ["front/vbar/both", 2],
    ["back", 1],
    ["upper", 1],
    ["lower", 1],
  ])
})

test("of equally flat hangs the lighter comes first, then the shorter stem", () => {
  // Off its stops a hanging weight's moment is its mass at the joint, whatever the stem.
  const asked = question({
    swing: template({ stopDeg: 90 }),
    places: ["upper"],
    ranges: { stemLengthMm: { from: 50, to: 200, step: 50 }, bobMassG: { from: 30, to: 30, step: 1 } },
    count: 4,
  })
  const { best } = unwrap(flattestHang(field, asked))
  expect(best.map((hang) => hang.swing.stemLengthMm)).toEqual([50, 100, 150, 200])
  const candidate = { place: 0, stemLengthMm: 70, bobMassG: 50, flatness: 0.3, massG: 2300, order: 0 }
  expect(betterHang(candidate, { ...candidate, massG: 2301 })).toBeLessThan(0)
  expect(betterHang({ ...candidate, massG: 9000 }, { ...candidate, flatness: 0.3001 })).toBeLessThan(0)
  expect(betterHang(candidate, { ...candidate, flatness: 0.3 + 1e-13, massG: 2299 })).toBeGreaterThan(0)
})

test("weights that are moved are taken off wherever they hang, whatever their order", () => {
  const scene = sceneOf(
    rigged({
      front: [
        swing({ bobMassG: 31 }),
        vbar({ left: arm(5, 7, [swing({ bobMassG: 37 }), discs()]) }),
        swing({ bobMassG: 41 }),
      ],
    }),
  )
  const moving = [
    ["rig", 0, "chain", 0],
    ["rig", 0, "chain", 2],
    ["rig", 0, "chain", 1, "left", "chain", 0],
  ]
  const left = withoutSwings(scene, moving)
  expect(JSON.stringify(left)).not.toContain("swing")
  expect(left.rig[0]!.chain.map(({ part }) => part)).toEqual(["vbar"])
  expect(withoutSwings(scene, moving.toReversed())).toEqual(left)
  expect(() => withoutSwings(scene, [moving[0]!, moving[0]!])).toThrow(RangeError)
  expect(() => withoutSwings(scene, [["rig", 0, "chain", 1]])).toThrow(RangeError)
})

const many = question({
  ranges: { stemLengthMm: { from: 20, to: 220, step: 4 }, bobMassG: { from: 10, to: 300, step: 10 } },
})

test("progress is reported as it goes and a stop ends it with the best so far", () => {
  const seen: number[] = []
  const whole = unwrap(flattestHang(field, many, ({ tried }) => seen.push(tried)))
  expect(whole.progress.tried).toBe(7 * 51 * 30)
  expect(seen).toEqual(Array.from({ length: seen.length }, (_, index) => (index + 1) * seen[0]!))
  expect(seen.length).toBeGreaterThan(5)
  let slices = 0
  const part = unwrap(flattestHang(field, many, undefined, () => ++slices === 3))
  expect(part.complete).toBe(false)
  expect(part.progress).toEqual({ tried: seen[2], total: whole.progress.total })
  expect(part.best).toHaveLength(5)
  expect(part.best[0]!.flatness).toBeGreaterThanOrEqual(whole.best[0]!.flatness)
})

test("run in slices it finds what it finds in one go", () => {
  const slices = unwrap(hangSearch(field, many))
  let step = slices.next()
  while (step.done !== true) step = slices.next()
  expect(step.value).toEqual(unwrap(flattestHang(field, many)))
})

test.each([
  [{ stemLengthMm: { from: 0, to: 90, step: 5 } }, ["stemLengthMm.from"]],
  [{ stemLengthMm: { from: 90, to: 70, step: 5 } }, ["stemLengthMm.to"]],
  [{ bobMassG: { from: 90, to: 4000, step: 0 } }, ["bobMassG.to", "bobMassG.step"]],
  [{ bobMassG: { from: Number.NaN, to: 70, step: 5 } }, ["bobMassG.from"]],
  [{ bobMassG: { from: 1, to: 3000, step: 1e-5 } }, [""]],
])("ranges a scene cannot have are refused with their place", (wrong, paths) => {
  const asked = question({ ranges: { ...question().ranges, ...wrong } })
  const result = flattestHang(field, asked)
  expect(result.ok).toBe(false)
  expect(!result.ok && result.errors.map(({ path }) => path)).toEqual(paths)
})

test("a place that the bow does not have is refused by name", () => {
  const result = flattestHang(field, question({ places: ["back", "keel"] }))
  expect(!result.ok && result.errors.map(({ path }) => path)).toEqual(["keel"])
})

test("a step that does not divide its range stops short of the end, and one that does by rounding reaches it", () => {
  const asked = question({
    places: ["back"],
    ranges: { stemLengthMm: { from: 50, to: 51, step: 0.1 }, bobMassG: { from: 30, to: 99, step: 35 } },
  })
  const { progress, bestByPlace } = unwrap(flattestHang(field, { ...asked, count: 22 }))
  expect(progress.total).toBe(11 * 2)
  expect(bestByPlace[0]!.swing.stemLengthMm.toString().length).toBeLessThanOrEqual(4)
})
