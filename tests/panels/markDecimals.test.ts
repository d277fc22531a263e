import { expect, test } from "vitest"
import { markDecimals } from "../../src/panels/plot/markDecimals"

test.each([
  [[0.125, 0.15, 0.175], 3],
  [[-0.2, 0, 0.2], 1],
  [[0.1, 0.3], 1],
  [[-40, -20], 0],
  [[2, 4.5], 1],
  [[7], 0],
])("marks at %j are said with %i decimals", (marks, decimals) => {
  expect(markDecimals(marks)).toBe(decimals)
})
