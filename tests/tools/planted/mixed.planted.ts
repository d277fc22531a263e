import { describe, expect, it } from "vitest"

// Five known endings for the runner's own test: two pass, one fails, one is skipped, one is put off.
describe("planted", () => {
  it("passes", () => expect(2 + 3).toBe(5))
  it("passes too", () => expect(2 * 3).toBe(6))
  it("fails", () => expect(2 + 3).toBe(7))
  it.skip("is skipped", () => expect(5).toBe(5))
  it.todo("is put off")
})
