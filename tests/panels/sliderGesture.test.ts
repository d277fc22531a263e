import { expect, test, vi } from "vitest"
import { setNumber } from "../../src/commands/numbers"
import { sliderGesture } from "../../src/panels/sliders/gesture"
import { fullBench, numberOn, stepsOn } from "../state/benches"

const ROD = "front/rod:lengthMm"

function sliding() {
  const bench = fullBench()
  const resumed = vi.fn()
  const gesture = sliderGesture(bench, resumed)
  const slide = (value: number) => gesture.change("rod", () => setNumber.run(bench, { key: ROD, value }))
  return { bench, gesture, slide, resumed, rod: () => numberOn(bench, ROD), first: numberOn(bench, ROD)! }
}

test("a press with all that it moves is one undo step, called by what is moved; one that moves nothing is none", () => {
  const { bench, gesture, slide, first, rod } = sliding()
  gesture.start("press")
  gesture.end("press")
  expect(stepsOn(bench)).toEqual([])
  gesture.start("press")
  for (const value of [557, 563, 569]) slide(value)
  expect(stepsOn(bench)).toEqual([])
  gesture.end("press")
  expect([stepsOn(bench), rod()]).toEqual([["rod"], 569])
  bench.undo()
  expect(rod()).toBe(first)
})

test("what is given up is as it was, what comes after until the end is dropped, and then the panel is told", () => {
  const { bench, gesture, slide, resumed, first, rod } = sliding()
  expect(gesture.giveUp()).toBeNull()
  gesture.start("press")
  slide(557)
  expect(gesture.giveUp()).toBe("press")
  slide(563)
  expect([rod(), resumed.mock.calls.length]).toEqual([first, 0])
  gesture.end("press")
  expect([stepsOn(bench), resumed.mock.calls.length]).toEqual([[], 1])
  gesture.start("press")
  slide(571)
  gesture.end("press")
  expect([stepsOn(bench), rod(), resumed.mock.calls.length]).toEqual([["rod"], 571, 1])
})

test("a press ends the visit to a box before it, and that box's leaving does not end the press", () => {
  const { bench, gesture, slide } = sliding()
  gesture.start("visit")
  slide(557)
  gesture.start("press")
  gesture.end("visit")
  slide(563)
  slide(569)
  gesture.end("press")
  expect(stepsOn(bench)).toEqual(["rod", "rod"])
})

test("a change outside of presses and visits is a step by itself", () => {
  const { bench, slide } = sliding()
  slide(557)
  slide(563)
  expect(stepsOn(bench)).toHaveLength(2)
})
