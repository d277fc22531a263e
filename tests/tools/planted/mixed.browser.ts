import { expect, test } from "@playwright/test"

// Four known endings for the runner's own test; no page is opened, so no browser is needed.
test("passes", () => expect(2 + 3).toBe(5))
test("fails", () => expect(2 + 3).toBe(7))
test("fails as foreseen", () => {
  test.fail()
  expect(2 * 3).toBe(5)
})
test.skip("is skipped", () => expect(5).toBe(5))
