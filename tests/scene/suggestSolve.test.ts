import { describe, expect, it } from "vitest"
import { fewestSteps } from "../../src/scene/suggest/solve"

/** The figure, with a count of how often it was asked for. */
function counted(figure: (steps: number) => number) {
  const calls = { count: 0 }
  const ask = (steps: number) => {
    calls.count++
    return figure(steps)
  }
  return { calls, ask }
}

describe("fewestSteps", () => {
  it("needs the value here, at the promised steps and one before for a straight figure", () => {
    const { calls, ask } = counted((steps) => 70 - 3 * steps)
    expect(fewestSteps(ask, -3, 60, { min: 20, max: 47 })).toBe(8)
    expect(calls.count).toBeLessThanOrEqual(3)
  })

  it("finds the first step inside where the rate here promises too few or too many", () => {
    const square = (steps: number) => steps * steps
    expect(fewestSteps(square, 0, 30, { min: 130, max: 170 })).toBe(12)
    expect(fewestSteps((steps) => 100 - square(steps) / 7, -20, 30, { min: 0, max: 47 })).toBe(20)
    expect(fewestSteps((steps) => -Math.sqrt(steps), -7, 300, { min: -13, max: -11 })).toBe(121)
  })

  it("finds none where the limit comes first, or one step leaps over the goal", () => {
    expect(fewestSteps((steps) => 3 * steps, 3, 4, { min: 13, max: 20 })).toBeNull()
    expect(fewestSteps((steps) => 5 * steps, 5, 40, { min: 11, max: 14 })).toBeNull()
    expect(fewestSteps((steps) => 3 * steps, 3, 0, { min: 2, max: 20 })).toBeNull()
  })

  it("finds none from inside, where nothing needs to be done", () => {
    expect(fewestSteps((steps) => 3 + steps, 1, 7, { min: 2, max: 5 })).toBeNull()
  })
})
