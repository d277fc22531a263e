import { describe, expect, test } from "vitest"
import { readArguments } from "../../src/report/arguments"

const request = (...words: string[]) => {
  const asked = readArguments(words)
  if (asked.kind !== "report") throw new Error(JSON.stringify(asked))
  return asked.request
}
const reason = (...words: string[]) => {
  const asked = readArguments(words)
  return asked.kind === "wrong" ? asked.reason : `accepted: ${JSON.stringify(asked)}`
}

describe("what is asked for", () => {
  test("files and flags come in any order", () => {
    const wanted = { files: ["a.json", "b.json"], json: true, pose: { draw: 0.5, slopeDeg: -20, cantDeg: 7 } }
    expect(request("a.json", "--draw", "0.5", "b.json", "--slope", "-20", "--json", "--cant", "7")).toEqual(wanted)
    expect(request("--json", "--cant=7", "--slope=-20", "--draw=.5", "a.json", "b.json")).toEqual(wanted)
  })

  test("a pose flag left out leaves the scene's own pose alone", () => {
    expect(request("a.json").pose).toEqual({})
    expect(request("a.json", "--slope", "5").pose).toEqual({ slopeDeg: 5 })
  })

  test("what follows -- is a file even if it looks like a flag", () => {
    expect(request("--json", "--", "--draw", "-x.json")).toEqual({ files: ["--draw", "-x.json"], json: true, pose: {} })
  })

  test.each(["--help", "-h"])("%s asks for the usage", (flag) => {
    expect(readArguments([flag]).kind).toBe("help")
  })
})

describe("what is refused", () => {
  test("no file at all", () => {
    expect(reason()).toBe("no scene file is given")
    expect(reason("--json")).toBe("no scene file is given")
  })

  test.each(["--jsn", "-j", "--Draw", "--__proto__", "--constructor=2"])("the unknown option %s", (flag) => {
    expect(reason("a.json", flag)).toBe(`unknown option ${flag.split("=")[0]}`)
  })

  test.each([
    ["--draw", "1.01", "0 … 1"],
    ["--draw", "-0.01", "0 … 1"],
    ["--slope", "90.5", "-90 … 90 °"],
    ["--slope", "-91", "-90 … 90 °"],
    ["--cant", "100", "-90 … 90 °"],
  ])("%s %s, out of its range", (flag, value, range) => {
    expect(reason("a.json", flag, value)).toBe(`${flag} needs a number in ${range}; "${value}" given`)
  })

  test.each(["", "half", "0x1", "Infinity", "NaN", "1e", "0,5", "--json"])("%j as a draw", (value) => {
    expect(reason("a.json", "--draw", value)).toBe(`--draw needs a number in 0 … 1; "${value}" given`)
  })

  test("a flag without its number", () => {
    expect(reason("a.json", "--slope")).toBe("--slope needs a number in -90 … 90 °; nothing given")
  })

  test("a flag given twice, rather than losing one of them", () => {
    expect(reason("a.json", "--slope", "3", "--slope", "5")).toBe("--slope is given twice")
  })
})

test.each([
  ["--draw", "0", 0],
  ["--draw", "1", 1],
  ["--slope", "-90", -90],
  ["--cant", "90", 90],
])("the end of the range, %s %s, is allowed", (flag, text, value) => {
  expect(Object.values(request("a.json", flag, text).pose)).toEqual([value])
})
