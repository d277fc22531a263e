import { expect, test } from "vitest"
import { playedDraw, steppedDraw } from "../../src/panels/draw/playedDraw"

test("the draw begins where the bow is, reaches full draw, is held and comes back to where it was", () => {
  const from = 0.3
  const shown = Array.from({ length: 1000 }, (_, index) => playedDraw(index / 100, from))
  const over = shown.indexOf(null)
  const seen = shown.slice(0, over) as number[]
  expect(seen[0]).toBe(from)
  expect(Math.max(...seen)).toBe(1)
  expect(seen.filter((fraction) => fraction === 1).length).toBeGreaterThan(100)
  expect(seen.at(-1)).toBeCloseTo(from, 2)
  expect(shown.slice(over).every((fraction) => fraction === null)).toBe(true)
})

test("nothing in the draw or the let-down jumps", () => {
  let largest = 0
  for (let time = 0; time < 5; time += 0.01) {
    const [now, later] = [playedDraw(time, 0), playedDraw(time + 0.01, 0)]
    if (now !== null && later !== null) largest = Math.max(largest, Math.abs(later - now))
  }
  expect(largest).toBeLessThan(0.01)
})

test("with less motion asked for only the quarters of the draw are shown", () => {
  expect([0, 0.2, 0.61, 0.9, 1].map(steppedDraw)).toEqual([0, 0.25, 0.5, 1, 1])
})
