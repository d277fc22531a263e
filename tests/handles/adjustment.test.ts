import { describe, expect, it } from "vitest"
import { beginAdjustment } from "../../src/handles/adjustment"
import { handleNamed } from "../../src/handles/current"
import { createBench } from "../../src/state/bench"
import { rigged, rod } from "../scene/documents"
import { sceneOf } from "../picture/pictures"

const ROD = "front/rod:lengthMm"

function benchWithRod(lengthMm: number) {
  const bench = createBench(sceneOf(rigged({ front: [rod({ lengthMm })] })))
  const { store } = bench
  const adjust = () => beginAdjustment(bench, handleNamed(store.getState(), ROD)!)
  const length = () => handleNamed(store.getState(), ROD)!.value
  return { bench, adjust, length, said: () => store.getState().said }
}

describe("an adjustment of a handle", () => {
  it("stays where it is when a value is refused, says why once, and goes on with the next that is taken", () => {
    const { adjust, length, said } = benchWithRod(710)
    const adjustment = adjust()
    expect(adjustment.set(790)).toBeNull()
    const { count } = said()
    expect(adjustment.set(2300)).toMatch(/^Not possible: Front rod, length: .*2000\.?/)
    expect(length()).toBe(790)
    expect(said()).toEqual({ text: adjustment.set(2300), count: count + 1 })
    expect(adjustment.set(820)).toBeNull()
    expect(length()).toBe(820)
  })

  it("says at the end of the range that there is no more, and where it is taken away that there is again", () => {
    const { adjust, length, said } = benchWithRod(5)
    const adjustment = adjust()
    expect(adjustment.set(1)).toBe("No less than 1\u00a0mm")
    expect(said().text).toBe("No less than 1\u00a0mm")
    expect(length()).toBe(1)
    expect(adjustment.set(6)).toBeNull()
  })

  it("is one step of the history when kept, and none when given up", () => {
    const { bench, adjust, length } = benchWithRod(710)
    const steps = () => bench.store.getState().history.past.length
    const kept = adjust()
    for (const value of [720, 730, 740]) kept.set(value)
    kept.keep()
    expect([length(), steps()]).toEqual([740, 1])
    const given = adjust()
    given.set(750)
    given.giveUp()
    expect([length(), steps()]).toEqual([740, 1])
    expect(bench.store.getState().said.text).toBe("Front rod length back to 740\u00a0mm.")
  })

  it("is over once somebody else has ended its gesture", () => {
    const { bench, adjust } = benchWithRod(710)
    const adjustment = adjust()
    adjustment.set(720)
    expect(adjustment.live()).toBe(true)
    bench.undo()
    expect(adjustment.live()).toBe(false)
  })
})
