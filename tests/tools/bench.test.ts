import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { runBenches, table } from "./bench"

describe("the bench runner", () => {
  it("prints every bench's ratios as one aligned table", async () => {
    expect(table(await runBenches(join(import.meta.dirname, "planted")))).toEqual([
      "what         ratio  against  detail",
      "planted       2.50  another  5 ms to 2 ms",
      "planted too  0.333  a third  1 ms to 3 ms",
    ])
  })

  it("refuses a folder without benches rather than print an empty table", async () => {
    await expect(runBenches(import.meta.dirname)).rejects.toThrow("holds no *.bench.ts")
  })
})
