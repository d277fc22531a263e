import { expect, test } from "vitest"
import { STEADY_WITHIN, type Steadiness, steadier, UNSTEADY } from "../../src/core/measure/instruments"
import { announced } from "../../src/panels/measure/restNews"

/** How often a rest comes and how often it is announced, read 20 times a second at these angles, rad. */
function heard(angles: readonly number[]) {
  let state: Steadiness = UNSTEADY
  let told = false
  let [rests, news] = [0, 0]
  angles.forEach((angle, index) => {
    const before = state
    state = steadier(state, { at: index * 50, down: [Math.sin(angle), -Math.cos(angle), 0] })
    const now = announced(told, state)
    if (state.steady && !before.steady) rests++
    if (now && !told) news++
    told = now
  })
  return { rests, news }
}

const seconds = (count: number, angle: (step: number) => number) =>
  Array.from({ length: count * 20 }, (_, step) => angle(step))

test("a rest whose noise passes the limit now and then is announced once", () => {
  // Every three seconds a reading twice as far off as a rest allows.
  const noisy = seconds(30, (step) => (step % 60 === 59 ? 2 * STEADY_WITHIN : 0))
  const { rests, news } = heard(noisy)
  expect(rests).toBeGreaterThan(5)
  expect(news).toBe(1)
})

test("a bow that is moved and hung anew is announced again at its new rest", () => {
  const moved = [...seconds(3, () => 0), ...seconds(3, () => 0.3), ...seconds(3, () => -0.2)]
  expect(heard(moved)).toEqual({ rests: 3, news: 3 })
})

test("after setting zero the next rest is news", () => {
  expect(announced(true, UNSTEADY)).toBe(false)
})
