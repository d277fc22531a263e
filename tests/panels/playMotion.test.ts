import { expect, test } from "vitest"
import { RADIAN_PER_DEGREE } from "../../src/core/constants"
import { setNumber } from "../../src/commands/numbers"
import { beginRun, turnRun } from "../../src/panels/hills/motionRun"
import { createPlayer } from "../../src/panels/hills/playMotion"
import { swingMotions } from "../../src/scene/hills"
import { createBench } from "../../src/state/bench"
import { pictured, playedNow } from "../../src/state/played"
import { sceneOf } from "../picture/pictures"
import { extender, rigged, swing } from "../scene/documents"

function played() {
  const scene = sceneOf(
    rigged(
      { lower: [swing()], back: [extender(), swing({ joint: "ball" })] },
      { pose: { draw: 0.3, slopeDeg: 5, cantDeg: 7 } },
    ),
  )
  const bench = createBench(scene)
  const motions = swingMotions(scene)
  const run = beginRun(
    motions.map(({ model }) => model!),
    5,
    { toDeg: 30, degreesASecond: 70 },
  )
  return { bench, motions, run, player: createPlayer(bench, motions), state: () => bench.store.getState() }
}

test("the picture has the bow and its weights where the motion has them; scene, numbers and history know nothing", () => {
  const { bench, motions, run, player, state } = played()
  const before = state()
  player.show(run, 31)
  const { now } = pictured(state())
  expect(now.pose).toEqual({ draw: 0.3, slopeDeg: run.traces[0]!.slope[31]! / RADIAN_PER_DEGREE, cantDeg: 7 })
  motions.forEach(({ path, stem }, index) => {
    const part = now.parts.find((each) => each.path === path)
    expect(part?.hung?.rest.direction).toEqual(stem(run.traces[index]!.inBow[31]!))
  })
  expect(state().scene).toBe(before.scene)
  expect(state().evaluation).toBe(before.evaluation)
  expect(state().history).toBe(before.history)
  expect(bench.store.getState().gesture).toBeNull()
})

test("the locked weights stay where they began, and the hillside is the one the bow is raised to", () => {
  const { motions, run, player, state } = played()
  player.show(run, 0)
  const first = state().played
  player.show(run, 50)
  expect(state().played?.locked).toBe(first?.locked)
  expect(state().played?.locked).toEqual(
    motions.map(({ path, stem }, index) => ({ path, direction: stem(run.traces[index]!.inBow[0]!) })),
  )
  expect(state().played?.hillDeg).toBe(30)
  expect(state().played?.room).toBe(first?.room)
})

test("when it is over the bow is shown as it is held", () => {
  const { run, player, state } = played()
  player.show(run, 20)
  player.show(null, 0)
  expect(playedNow(state())).toBeNull()
  expect(pictured(state())).toBe(state().evaluation)
})

test("a change to the bow ends the motion, and what was left of it is not shown on the changed bow", () => {
  const { bench, run, player, state } = played()
  player.show(run, 20)
  expect(setNumber.run(bench, { key: "pose:slopeDeg", value: 11 }).ok).toBe(true)
  expect(playedNow(state())).toBeNull()
  expect(pictured(state())).toBe(state().evaluation)
  player.show(run, 21)
  expect(state().played).toBeNull()
})

test("a new aim in mid motion goes on with the same bow, toward its own hillside", () => {
  const { run, player, state } = played()
  player.show(run, 20)
  const turned = turnRun(run, 0.4, { toDeg: -15, degreesASecond: 70 })
  player.show(turned, 25)
  expect(playedNow(state())?.hillDeg).toBe(-15)
})
