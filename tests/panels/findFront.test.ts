import fc from "fast-check"
import { expect, test } from "vitest"
import { frontOf, scaleOf } from "../../src/panels/find/front"

const setup = fc.record({
  massG: fc.integer({ min: 0, max: 9 }),
  resistance: fc.integer({ min: 0, max: 9 }),
})

test("on the front stands each setup that none other beats in mass and resistance, once, from the lightest up", () => {
  fc.assert(
    fc.property(fc.array(setup, { maxLength: 30 }), (setups) => {
      const front = frontOf(setups)
      const beaten = (a: number) =>
        setups.some((b, index) => {
          const { massG, resistance } = setups[a]!
          if (b.massG > massG || b.resistance < resistance) return false
          return b.massG < massG || b.resistance > resistance || index < a
        })
      const unbeaten = setups.map((_, index) => index).filter((index) => !beaten(index))
      expect([...front].sort((a, b) => a - b)).toEqual(unbeaten)
      const masses = front.map((index) => setups[index]!.massG)
      expect(masses).toEqual([...masses].sort((a, b) => a - b))
    }),
    { seed: 20_501 },
  )
})

test("a scale holds every value between round marks, and has room where all are the same", () => {
  const { from, to, marks } = scaleOf([2921, 2937, 2955], 4, 5)
  expect(from).toBeLessThan(2921)
  expect(to).toBeGreaterThan(2955)
  expect(marks).toEqual([2920, 2940, 2960])
  const flat = scaleOf([3, 3], 4, 0.5)
  expect([flat.from, flat.to]).toEqual([2.5, 3.5])
  expect(flat.marks.length).toBeGreaterThan(2)
})
