import { expect } from "vitest"
import type { Result } from "../../src/scene/errors"
import type { Bench } from "../../src/state/bench"
import { DONE, sceneOn, stepsOn } from "../state/benches"

/** Does it, and sees that it was one step which undo takes back whole and redo does again. */
export function done(bench: Bench, label: string, act: () => Result<void>) {
  const [before, steps] = [sceneOn(bench), stepsOn(bench).length]
  expect(act()).toEqual(DONE)
  const after = sceneOn(bench)
  expect(stepsOn(bench).slice(steps)).toEqual([label])
  bench.undo()
  expect(sceneOn(bench)).toEqual(before)
  bench.redo()
  expect(sceneOn(bench)).toEqual(after)
}
