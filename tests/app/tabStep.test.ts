import { expect, test } from "vitest"
import { tabStep } from "../../src/app/tabStep"

// Rows of four, the last tab filling its row:
//   0 1 2 3
//   4 5 6 6
const step = (key: string, at: number) => tabStep(key, at, 7, 4)

test("left and right go through all tabs, across rows and around the ends", () => {
  expect(step("ArrowRight", 2)).toBe(3)
  expect(step("ArrowRight", 3)).toBe(4)
  expect(step("ArrowLeft", 4)).toBe(3)
  expect(step("ArrowRight", 6)).toBe(0)
  expect(step("ArrowLeft", 0)).toBe(6)
})

test("up and down stay in their column and go around", () => {
  expect(step("ArrowDown", 1)).toBe(5)
  expect(step("ArrowDown", 5)).toBe(1)
  expect(step("ArrowUp", 2)).toBe(6)
  expect(step("ArrowUp", 6)).toBe(2)
})

test("the last tab, which fills its row, stands below the columns that have no cell of their own there", () => {
  expect(step("ArrowDown", 3)).toBe(6)
  expect(step("ArrowUp", 3)).toBe(6)
})

test("Home and End lead to the first and the last tab, and no other key leads anywhere", () => {
  expect(step("Home", 5)).toBe(0)
  expect(step("End", 2)).toBe(6)
  for (const key of ["Enter", " ", "Tab", "a"]) expect(step(key, 2)).toBeNull()
})

test("in full rows each key leads to a tab, and its opposite leads back", () => {
  for (const [count, columns] of [
    [6, 3],
    [8, 4],
    [5, 5],
    [3, 1],
  ] as const)
    for (let at = 0; at < count; at++)
      for (const [there, back] of [
        ["ArrowLeft", "ArrowRight"],
        ["ArrowUp", "ArrowDown"],
      ] as const) {
        const to = tabStep(there, at, count, columns)!
        expect(to).toBeGreaterThanOrEqual(0)
        expect(to).toBeLessThan(count)
        expect(tabStep(back, to, count, columns)).toBe(at)
      }
})
