import { expect, test } from "vitest"
import { bowLines, clockwise, enlargement, room, seen } from "../../src/clinic/nudge/bowLines"
import { createClock } from "../../src/clinic/nudge/clock"
import { playDrop } from "../../src/clinic/nudge/playDrop"
import { contentOf, PLOTTED, tracesOf } from "../../src/clinic/nudge/traceContent"
import { lastingOf, watch, type Watched, type WatchQuestion } from "../../src/clinic/nudge/watched"
import { figuresOf } from "../../src/scene/figures"
import { readScene } from "../../src/scene/parse"
import { createBench } from "../../src/state/bench"
import type { Beside } from "../../src/state/compared"
import { playedNow } from "../../src/state/played"
import { evaluationOf, sceneOf } from "../picture/pictures"
import { discs, recurveBow, rigged, rod, smallestDocument, swing } from "../scene/documents"

const made = (...chain: ReturnType<typeof rod>[]) =>
  evaluationOf(sceneOf(rigged({ front: chain, back: [swing()] }, { bow: recurveBow() })))
const present = made(rod(), discs())
const other = made(rod({ lengthMm: 310 }))
const held: Beside = { name: "other", scene: other.scene, evaluation: other, figures: figuresOf(other) }

const asked = (more: Partial<WatchQuestion> = {}): WatchQuestion => ({
  kind: "knock",
  motion: "yaw",
  impulse: 0.013,
  push: 0.31,
  lastingS: 0.117,
  hold: "free",
  ...more,
})

function watched(question: WatchQuestion, beside: Beside | null = held): readonly Watched[] {
  const bows = watch(present, beside, question)
  if (!bows.ok) throw new Error(bows.errors[0]?.message)
  return bows.value
}

test("both bows are watched alike, the drawn ones after a nudge and those let down after the shot", () => {
  expect(watched(asked(), null).map(({ which }) => which)).toEqual(["now"])
  const nudged = watched(asked())
  expect(nudged.map(({ which }) => which)).toEqual(["now", "held"])
  expect(nudged[0]!.balance).toBe(present.fullDraw)
  const [here, there] = watched(asked({ kind: "drop" }))
  expect([here!.balance.limbs.drawFraction, there!.balance.limbs.drawFraction]).toEqual([0, 0])
  expect(lastingOf(here!)).toBe(lastingOf(there!))
})

test("a clock stays between its start and its end and tells all who watch", () => {
  const clock = createClock()
  const told: number[] = []
  const leave = clock.watch((time) => told.push(time))
  clock.setEnd(0.5)
  clock.seek(0.2)
  clock.seek(0.7)
  clock.setEnd(0.3)
  clock.seek(-1)
  leave()
  clock.seek(0.1)
  expect(told).toEqual([0, 0, 0.2, 0.5, 0.3, 0])
  expect([clock.now(), clock.end()]).toEqual([0.1, 0.3])
})

test("pictures turn the way the bow does: front up and front left counter-clockwise, top right clockwise", () => {
  const degree = Math.PI / 180
  expect(clockwise("pitch", 3 * degree)).toBeCloseTo(-3, 12)
  expect(clockwise("yaw", 5 * degree)).toBeCloseTo(-5, 12)
  expect(clockwise("roll", 7 * degree)).toBeCloseTo(7, 12)
  // Forward is to the right on the page, up is up, and the archer's right is down from above, right from behind.
  expect(seen.pitch([2, 3, 5])).toEqual([2, -3])
  expect(seen.yaw([2, 3, 5])).toEqual([2, 5])
  expect(seen.roll([2, 3, 5])).toEqual([5, -3])
})

test("small turns are drawn larger by a round factor, up to 25°, and large ones as they are", () => {
  expect(enlargement(0.001)).toBe(200)
  expect(enlargement(0.1)).toBe(2)
  expect(enlargement(Math.PI / 6)).toBe(1)
  expect(enlargement(0)).toBe(1)
  for (const largest of [1e-5, 3e-3, 0.07])
    expect(enlargement(largest) * largest).toBeLessThanOrEqual((25 * Math.PI) / 180)
})

test("a little picture has limbs, riser, string, arrow, rods and weights, and room for all of them turned", () => {
  const lines = bowLines(present.scene, present.fullDraw)
  const looks = new Set(lines.map(({ look }) => look))
  expect([...looks].sort()).toEqual(["arrow", "limb", "riser", "rod", "string", "weight"])
  expect(bowLines(present.scene, present.now).some(({ look }) => look === "arrow")).toBe(false)
  const still = room(lines, "pitch", 0)
  const fromAbove = [0, 0.4].map((turn) => room(lines, "yaw", turn).height)
  for (const [x, y] of lines.flatMap(({ points }) => points.map(seen.pitch))) {
    expect(x).toBeGreaterThan(still.left)
    expect(x).toBeLessThan(still.left + still.width)
    expect(y).toBeGreaterThan(still.top)
    expect(y).toBeLessThan(still.top + still.height)
  }
  expect(fromAbove[1]).toBeGreaterThan(fromAbove[0]!)
})

test("a compound is drawn too", () => {
  const scene = readScene(smallestDocument())
  if (!scene.ok) throw new Error("not a scene")
  const { fullDraw } = evaluationOf(scene.value)
  expect(bowLines(scene.value, fullDraw).filter(({ look }) => look === "limb")).toHaveLength(2)
})

test("the plots have the motion asked for of each bow, and everything that turns with it", () => {
  const bows = watched(asked())
  const { x, main, others } = tracesOf(bows, "yaw")
  expect(main.map(({ name }) => name)).toEqual(["this bow", "held"])
  expect(others.map(({ name }) => name)).toEqual(["pitch", "roll", "held pitch", "held roll"])
  const at = 50
  expect(main[1]!.values[at]).toBeCloseTo((bows[1]!.trace.angles[at * PLOTTED]![1] * 180) / Math.PI, 12)
  expect(others[1]!.values[at]).toBeCloseTo((bows[0]!.trace.angles[at * PLOTTED]![0] * 180) / Math.PI, 12)
  expect(contentOf(x, main, 0.3, 0.016).marks.map((mark) => [mark.x, mark.text])).toEqual([
    [0.016, "arrow leaves"],
    [0.3, ""],
  ])
})

test("where nothing else turns there are no other lines", () => {
  expect(tracesOf(watched(asked({ kind: "drop", motion: "pitch" })), "pitch").others).toEqual([])
})

test("a drop plays in the main picture while the clock is between start and end, and ends with a change of the bow", () => {
  const { scene } = present
  const bench = createBench(scene)
  const { evaluation } = bench.store.getState()
  const bows = watch(evaluation, null, asked({ kind: "drop", motion: "pitch" }))
  if (!bows.ok) throw new Error("no drop")
  const [bow] = bows.value
  const clock = createClock()
  clock.setEnd(lastingOf(bow!))
  const leave = playDrop(bench, evaluation, bow!.shot!, bow!.trace, clock)
  const shown = () => bench.store.getState().played?.evaluation.now.pose ?? null
  expect(shown()).toBeNull()
  clock.seek(0.1)
  expect(shown()!.slopeDeg).toBeCloseTo((bow!.trace.angles[100]![2] * 180) / Math.PI, 9)
  expect(shown()!.draw).toBe(0)
  clock.seek(99)
  expect(shown()).toBeNull()
  clock.seek(0.2)
  expect(shown()).not.toBeNull()
  leave()
  expect(shown()).toBeNull()

  playDrop(bench, evaluation, bow!.shot!, bow!.trace, clock)
  bench.change("heavier", (draft) => {
    draft.bow.riser.massG += 7
  })
  clock.seek(0.1)
  expect(playedNow(bench.store.getState())).toBeNull()
})
