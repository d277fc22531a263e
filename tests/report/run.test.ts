import { describe, expect, test } from "vitest"
import type { FileText } from "../../src/report/readText"
import { run } from "../../src/report/run"
import { fullDocument, smallestDocument } from "../scene/documents"

const files: Record<string, string> = {
  "full.json": JSON.stringify(fullDocument()),
  "small.json": JSON.stringify(smallestDocument()),
  "far.json": JSON.stringify({ ...smallestDocument(), pose: { draw: 3 }, extra: 2 }),
  "odd.json": JSON.stringify({ ...smallestDocument(), "a\nb\u001b[31m": 2 }),
  "broken.json": "{",
}
const read = (file: string): FileText => {
  const text = files[file]
  return text === undefined ? { ok: false, reason: "there is no such file" } : { ok: true, text }
}
const report = (...words: string[]) => run(words, read)
const json = (...words: string[]) => JSON.parse(report(...words, "--json").output)

const keys = [
  ..."massG centreMm inertiaGrip inertiaCentre principal armForwardMm armSideMm noseDownNm cantRightNm".split(" "),
  ..."holdForceN pitchInertiaFree stripped parts fullDraw slopes drawCurve".split(" "),
]

describe("as JSON", () => {
  test("one file is the bare object with every key of the format", () => {
    const figures = json("full.json")
    expect(Object.keys(figures)).toEqual(keys)
    expect(Object.keys(figures.stripped)).toEqual(["massG", "centreMm", "inertiaGrip"])
    expect(Object.keys(figures.parts[0])).toEqual(["path", "massG", "centreMm", "noseDownNm"])
    expect(Object.keys(figures.fullDraw).sort()).toEqual(
      "balancedForwardMm centreMm gripShiftMm holdForceN liftNm massG netLiftNm noseDownNm".split(" "),
    )
    expect(Object.keys(figures.slopes[0])).toEqual(["slopeDeg", "noseDownNm", "netLiftNm"])
    expect(Object.keys(figures.drawCurve[0])).toEqual(["drawMm", "forceN"])
  })

  test("the free pitch resistance is there with a swing weight only", () => {
    expect(Object.keys(json("small.json"))).toEqual(keys.filter((key) => key !== "pitchInertiaFree"))
  })

  test("several files are a list of the same objects, each with its file first", () => {
    const both = json("full.json", "small.json")
    expect(both.map((each: object) => Object.keys(each)[0])).toEqual(["file", "file"])
    expect(both).toEqual([
      { file: "full.json", ...json("full.json") },
      { file: "small.json", ...json("small.json") },
    ])
  })

  test("slopes run from 45° down to 45° up in steps of 5°", () => {
    const slopes = json("small.json").slopes.map((row: { slopeDeg: number }) => row.slopeDeg)
    expect(slopes).toEqual([-45, -40, -35, -30, -25, -20, -15, -10, -5, 0, 5, 10, 15, 20, 25, 30, 35, 40, 45])
  })

  test("the level row of the slopes is the full draw, whatever the pose", () => {
    const { slopes, fullDraw } = json("full.json", "--draw", "0.3", "--slope", "31", "--cant", "-7")
    expect(slopes[9]).toEqual({ slopeDeg: 0, noseDownNm: fullDraw.noseDownNm, netLiftNm: fullDraw.netLiftNm })
  })

  test("the draw curve leads in even steps from nothing at brace to the holding force at full draw", () => {
    const { drawCurve, fullDraw } = json("small.json")
    expect(drawCurve.length).toBeGreaterThanOrEqual(25)
    expect(drawCurve[0]).toEqual({ drawMm: 190, forceN: 0 })
    expect(drawCurve.at(-1).forceN).toBe(fullDraw.holdForceN)
    const step = (690 - 190) / (drawCurve.length - 1)
    drawCurve.forEach((point: { drawMm: number }, index: number) => {
      expect(point.drawMm).toBeCloseTo(190 + index * step, 9)
    })
  })

  test("flags replace the scene's own pose, one by one", () => {
    const own = json("full.json")
    expect(json("full.json", "--slope", "15", "--cant", "4", "--draw", "0")).toEqual(own)
    expect(json("full.json", "--slope", "16").noseDownNm).not.toBe(own.noseDownNm)
    expect(json("full.json", "--cant", "5").cantRightNm).not.toBe(own.cantRightNm)
    const drawn = json("full.json", "--draw", "1")
    expect(drawn.holdForceN).toBe(own.fullDraw.holdForceN)
    expect(drawn.massG).toBeCloseTo(own.massG + 23, 9)
    expect(drawn.stripped.massG).toBeCloseTo(own.stripped.massG + 23, 9)
  })
})

describe("what cannot be reported", () => {
  test("a wrong scene: status 2, a line per reason with file and path, nothing on standard output", () => {
    expect(report("far.json")).toEqual({
      output: "",
      errors:
        "far.json: pose.draw: 3 given; a number in 0 … 1 is needed\n" +
        "far.json: extra: is not a key of this format; check its spelling\n",
      status: 2,
    })
  })

  test("one bad file among good ones: nothing is printed but the reasons of all bad ones", () => {
    for (const flag of [[], ["--json"]]) {
      const outcome = report("full.json", "none.json", "small.json", "broken.json", ...flag)
      expect(outcome.output).toBe("")
      expect(outcome.status).toBe(2)
      const lines = outcome.errors.trimEnd().split("\n")
      expect(lines).toHaveLength(2)
      expect(lines[0]).toBe("none.json: there is no such file")
      expect(lines[1]).toMatch(/^broken\.json: not JSON: line 1, column 2: /)
    }
  })

  test("a key with control characters stays on its line and gives the terminal no orders", () => {
    expect(report("odd.json").errors).toBe(
      "odd.json: a\ufffdb\ufffd[31m: is not a key of this format; check its spelling\n",
    )
  })

  test("wrong arguments: the reason, then the usage, and status 2", () => {
    const outcome = report("--bogus")
    expect(outcome.output).toBe("")
    expect(outcome.status).toBe(2)
    expect(outcome.errors).toMatch(/^unknown option --bogus\n\nUsage: npm run -s report -- FILE\.\.\. /)
  })

  test("asked for help, the usage is the answer and no error", () => {
    const { output, errors, status } = report("--help")
    expect([errors, status]).toEqual(["", 0])
    for (const word of ["--draw", "--slope", "--cant", "--json", "0 … 1", "-90 … 90"]) expect(output).toContain(word)
  })
})
