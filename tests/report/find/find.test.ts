import { spawnSync } from "node:child_process"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { readFindArguments } from "../../../src/report/find/arguments"
import { runFind } from "../../../src/report/find/run"
import type { FileText } from "../../../src/report/readText"
import { serveFind } from "../../../src/scene/find"
import type { Spawn } from "../../../src/scene/find/pool/pool"
import { kitTable, readKit } from "../../../src/scene/kit"
import { discs, rigged, rod, smallestDocument } from "../../scene/documents"
import { kitDocument } from "../../scene/kit/kits"

const root = join(import.meta.dirname, "../../..")
const kit = readKit(kitDocument())
const files: Record<string, string> = {
  "bow.json": JSON.stringify(rigged({ front: [rod(), discs()] }, { name: "the bow", target: { forwardMm: [30, 60] } })),
  "bare.json": JSON.stringify(smallestDocument()),
  "kit.json": JSON.stringify(kitDocument()),
  "kit.csv": kit.ok ? kitTable(kit.value) : "",
  "bad.csv": "piece,name,count,massG\nrod,a,1,heavy\n",
}
const read = (file: string): FileText =>
  Object.hasOwn(files, file) ? { ok: true, text: files[file]! } : { ok: false, reason: "there is no such file" }

/** Workers in this very process. */
const spawn: Spawn = (onReport) => {
  const soon = () => new Promise<void>((resolve) => setTimeout(resolve))
  const serve = serveFind((report) => setTimeout(() => onReport(report)), soon)
  return { post: (order) => void setTimeout(() => serve(order)), end: () => {} }
}
const find = (...words: string[]) => runFind(words, { processors: 2, spawn, read })

describe("what is printed", () => {
  test("as JSON: the question, how much is covered, and each setup with its rig and what to do", async () => {
    const { output, errors, status } = await find("bow.json", "kit.json", "--json", "--count", "3", "--most-discs=4")
    expect([errors, status]).toEqual(["", 0])
    const { question, combinations, covered, proved, setups, misses } = JSON.parse(output)
    expect(question).toMatchObject({ mounts: ["front"], mostDiscs: 4, count: 3, target: { forwardMm: [30, 60] } })
    expect([covered, proved, misses]).toEqual([combinations, true, []])
    expect(setups).toHaveLength(3)
    expect(setups[0].centreMm[0]).toBeCloseTo(45, 1)
    expect(setups[0].rig[0].mount).toBe("front")
    expect(setups[0].changes[0]).toMatch(/^Front: /)
  })

  test("for a person: a proved list, what each is made of, and the way to the first", async () => {
    const { output } = await find("bow.json", "kit.csv", "--count", "2", "--score", "lightest")
    expect(output).toMatch(
      /^the bow, from the kit “kit”: lightest\nAll [\d,]+ combinations are covered: this list is proved\.\n/,
    )
    expect(output).toContain("What they are made of\n  1  Front: ")
    expect(output).toContain("To get the first from the rig as it is\n  Front: ")
    expect(output).toMatch(
      /\n\nRecheck every thread after a change\.\n\nThe figures are as good as the masses and lengths entered: .*\n$/,
    )
  })

  test("without a setup: what binds, and the nearest miss of each limit, with status 0", async () => {
    const { output, status } = await find("bow.json", "kit.json", "--forward", "800,810", "--mass-max", "2900")
    expect(status).toBe(0)
    expect(output).toMatch(/No setup from this kit meets every limit; all [\d,]+ combinations are covered\./)
    expect(output).toMatch(/Balance point forward: out of reach of this kit; the nearest is [\d.]+\u00a0mm/)
    expect(output).toContain("Mass: can be met by itself; the other limits cannot all be met together.")
  })
})

describe("what cannot be searched", () => {
  test("bad files: every reason with file and place, nothing printed, status 2", async () => {
    expect(await find("none.json", "bad.csv")).toEqual({
      output: "",
      errors:
        "none.json: there is no such file\n" +
        'bad.csv: line 2, massG: "heavy" given; a number in 0 … 2000 g is needed\n' +
        "bad.csv: line 2, lengthMm: is missing; a number in 1 … 2000 mm is needed\n" +
        "bad.csv: line 2, outerMm: is missing; a number in 1 … 200 mm is needed\n",
      status: 2,
    })
  })

  test("a bow without mounts: the place in the question", async () => {
    const { errors, status } = await find("bare.json", "kit.json")
    expect([errors, status]).toEqual(["mounts: none given; at least one mount to build on is needed\n", 2])
  })

  test.each([
    [["bow.json"], "a scene file and a kit file are needed"],
    [["a", "b", "c"], 'one scene and one kit are taken; "c" is one too many'],
    [["a", "b", "--speed", "3"], "unknown option --speed"],
    [["a", "b", "--count", "2", "--count=3"], "--count is given twice"],
    [["a", "b", "--up", "5"], '--up needs two numbers in -1000 … 1000 mm with a comma between; "5" given'],
    [["a", "b", "--mounts", "front,side"], /^--mounts needs names out of front, upper, lower, back/],
    [["a", "b", "--score", "heaviest"], /^--score needs one of nearest, lightest, steadiest, steady-for-mass;/],
    [["a", "b", "--workers"], "--workers needs a whole number in 1 … 16; nothing given"],
  ])("wrong arguments %j are told, with the usage", async (words, reason) => {
    const asked = readFindArguments(words)
    expect(asked).toEqual({ kind: "wrong", reason: reason instanceof RegExp ? expect.stringMatching(reason) : reason })
    const { errors, status } = await find(...words)
    expect(status).toBe(2)
    expect(errors).toContain("Usage: npm run -s find -- SCENE KIT")
  })

  test("every limit can be given or dropped, negative numbers too", () => {
    const words = ["a", "b", "--side", "-6,5", "--net-lift=-0.5,2", "--mass-max", "none", "--pitch-least", "0.3"]
    const asked = readFindArguments([
      ...words,
      "--reach-side",
      "400",
      "--vbar-mount",
      "none",
      "--front-rod",
      "optional",
    ])
    expect(asked).toMatchObject({
      request: {
        target: { sideMm: [-6, 5], netLiftNm: [-0.5, 2], pitchLeast: 0.3, reachSideMm: 400 },
        question: { vbarMount: null },
        always: { frontRod: false },
      },
    })
    expect(asked.kind === "find" && "massMaxG" in asked.request.target).toBe(true)
  })
})

test("the process a person starts shares the work among threads and leaves status 0", () => {
  const words = ["scenes/barebow-riser-weights.json", "scenes/kits/barebow-pouch.json", "--json", "--count", "2"]
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ["src/report/find/launch.mjs", ...words, "--workers", "2"],
    { cwd: root, encoding: "utf8" },
  )
  expect([stderr, status]).toEqual(["", 0])
  expect(JSON.parse(stdout)).toMatchObject({ proved: true, setups: [{}, {}] })
}, 60_000)
