import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterEach, beforeEach, describe, expect, it } from "vitest"
import { sourceStamp } from "../../src/report/source-stamp.mjs"

/** Long before any file these tests write. */
const longAgo = new Date("2003-05-07T00:00:00Z")

let root = ""
const stamp = () => sourceStamp(root, ["src", "lock.json"])

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), "planted-"))
  mkdirSync(join(root, "src/inner"), { recursive: true })
  writeFileSync(join(root, "src/inner/three.ts"), "export const three = 3\n")
  writeFileSync(join(root, "lock.json"), "{}\n")
  writeFileSync(join(root, "aside.ts"), "export const seven = 7\n")
})
afterEach(() => rmSync(root, { recursive: true }))

describe("the stamp of a build's sources", () => {
  it("stays the same while nothing changes, also when a file outside the sources does", () => {
    const before = stamp()
    writeFileSync(join(root, "aside.ts"), "export const five = 5\n")
    expect(stamp()).toBe(before)
  })

  it.each<[string, () => void]>([
    ["a source is written", () => writeFileSync(join(root, "src/inner/three.ts"), "export const three = 3.0\n")],
    ["a source is removed", () => rmSync(join(root, "src/inner/three.ts"))],
    ["a source is renamed", () => renameSync(join(root, "src/inner/three.ts"), join(root, "src/inner/two.ts"))],
    ["a single file named as source goes missing", () => rmSync(join(root, "lock.json"))],
    [
      "an old file is moved in",
      () => {
        utimesSync(join(root, "aside.ts"), longAgo, longAgo)
        renameSync(join(root, "aside.ts"), join(root, "src/aside.ts"))
      },
    ],
  ])("changes when %s", (_what, change) => {
    const before = stamp()
    change()
    expect(stamp()).not.toBe(before)
  })
})
