import { expect, test } from "vitest"
import { fileNameFor, withJson } from "../../src/files/saveFile"

test.each([
  ["Target recurve, straight bar", "target-recurve-straight-bar.json"],
  ["  Ünïcode Å — bow no. 7!  ", "unicode-a-bow-no-7.json"],
  ["../../etc/passwd", "etc-passwd.json"],
  ["弓", "bow.json"],
  ["", "bow.json"],
])("the setup %o is saved as %s unless the coach says otherwise", (name, file) => {
  expect(fileNameFor(name)).toBe(file)
})

test("a very long name becomes a file name that every file system takes, and does not end in a dash", () => {
  expect(fileNameFor(`${"long ".repeat(40)}`)).toMatch(/^(long-){15}long\.json$/)
  expect(fileNameFor("x".repeat(200))).toBe(`${"x".repeat(80)}.json`)
})

test.each([
  ["mine", "mine.json"],
  ["  mine.json ", "mine.json"],
  ["Mine.JSON", "Mine.JSON"],
  ['a/b\\c:d*e?f"g<h>i|j', "a-b-c-d-e-f-g-h-i-j.json"],
  ["mine.v2", "mine.v2.json"],
  [" ", "bow.json"],
])("a file name typed as %o is taken as %s", (typed, file) => {
  expect(withJson(typed)).toBe(file)
})
