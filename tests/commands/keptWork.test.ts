import { expect, test } from "vitest"
import { bringBack, discardKept } from "../../src/commands/keptWork"
import { setNumber } from "../../src/commands/numbers"
import type { Bench } from "../../src/state/bench"
import { hasUnsavedChanges } from "../../src/state/bench"
import { MOST_KEPT, withWork } from "../../src/state/setAside"
import { DONE, fullBench, fullScene, sceneOn, stepsOn } from "../state/benches"

const named = (name: string, at: number) => ({ scene: { ...fullScene(), name }, fileName: `${name}.json`, at })
const [older, newer] = [named("older", 1000), named("newer", 2000)]

function benchBeside() {
  const bench = fullBench()
  bench.store.setState({ setAside: [newer, older] })
  return bench
}
const aside = (bench: Bench) => bench.store.getState().setAside

test("work brought back is on the bench, unsaved, and no longer set aside; undo and redo take both along", () => {
  const bench = benchBeside()
  expect(bringBack.run(bench, { work: older, now: 3000 })).toEqual(DONE)
  const back = () => {
    expect([sceneOn(bench), aside(bench)]).toEqual([older.scene, [newer]])
    expect(bench.store.getState().fileName).toBe("older.json")
    expect(hasUnsavedChanges(bench.store.getState())).toBe(true)
  }
  back()
  bench.undo()
  expect([sceneOn(bench), aside(bench)]).toEqual([fullScene(), [newer, older]])
  expect(hasUnsavedChanges(bench.store.getState())).toBe(false)
  bench.redo()
  back()
})

test("unsaved work on the bench changes places with the work brought back", () => {
  const bench = benchBeside()
  bench.markSaved("mine.json")
  setNumber.run(bench, { key: "front/rod:lengthMm", value: 570 })
  const mine = sceneOn(bench)
  bringBack.run(bench, { work: newer, now: 3000 })
  expect(aside(bench)).toEqual([{ scene: mine, fileName: "mine.json", at: 3000 }, older])
})

test("work discarded is gone, as one step that keeps the file's name as it is when it is undone", () => {
  const bench = benchBeside()
  expect(discardKept.run(bench, newer)).toEqual(DONE)
  expect([aside(bench), stepsOn(bench), sceneOn(bench)]).toEqual([[older], ["newer discarded"], fullScene()])
  bench.markSaved("mine.json")
  bench.undo()
  expect(aside(bench)).toEqual([newer, older])
  expect(bench.store.getState().fileName).toBe("mine.json")
  bench.redo()
  expect(aside(bench)).toEqual([older])
})

test("what is set aside again moves to the front, and past the most that is kept the oldest goes", () => {
  const again = { ...named("older", 5000) }
  expect(withWork([newer, older], again)).toEqual([again, newer])
  let list = withWork([], older)
  for (let count = 1; count <= MOST_KEPT; count++) list = withWork(list, named(`bow ${count}`, 7000 + count))
  expect(list).toHaveLength(MOST_KEPT)
  expect(list[0]?.scene.name).toBe(`bow ${MOST_KEPT}`)
  expect(list).not.toContain(older)
})
