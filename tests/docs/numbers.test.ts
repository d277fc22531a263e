/** Every number that the documents quote is tied here to what it comes from; a new one needs its line. */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { armDirection } from "../../src/core/rig"
import { amoBowMm } from "../../src/describe/bowLength"
import { liftSlopes } from "../../src/describe/liftText"
import { readText } from "../../src/report/readText"
import { run } from "../../src/report/run"
import { drawWork } from "../../src/scene/drawWork"
import { evaluate } from "../../src/scene/evaluate"
import { archerFields, mountFields, poseFields } from "../../src/scene/fields"
import { FLATNESS_DEG } from "../../src/scene/hills"
import { parseScene } from "../../src/scene/parse"
import { type Quote, staleQuotes, untiedNumbers } from "./number-check"

const root = join(import.meta.dirname, "../..")
const read = (path: string) => readFileSync(join(root, path), "utf8")

function longBow() {
  const scene = parseScene(read("scenes/target-recurve-68-inch.json"))
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  const work = drawWork(scene.value.bow)
  const evaluation = evaluate(scene.value)
  if (!work.ok || !evaluation.ok) throw new Error("the limbs have no solution")
  const { bow, archer } = scene.value
  const slopes = liftSlopes({
    force: evaluation.value.fullDraw.limbs.holdForce,
    nockHeight: bow.nockHeightMm / 1e3,
    draw: bow.drawLengthMm / 1e3,
    elbow: (archer.elbowElevationDeg * Math.PI) / 180,
  })
  return { bow, slopes, work: work.value }
}

/** Fullness of the measured recurves of Tuijn and Kooi, European Journal of Physics 13 (1992), Table I: J, N and m. */
const MEASURED = [
  [42.6, 170.5, 0.43],
  [50.3, 170, 0.509],
  [45.6, 178, 0.44],
  [33.2, 130, 0.429],
].map(([stored, force, way]) => stored! / (force! * way!))

const readme: readonly Quote[] = [
  {
    words: "[Node.js](https://nodejs.org) 20 or newer",
    holds: () => expect(JSON.parse(read("package.json")).engines.node).toBe(">=20"),
  },
  {
    words: "http://localhost:5173",
    holds: () => expect(read("tests/tools/start.ts")).toContain('port: { type: "string", default: "5173" }'),
  },
  {
    words: "scenes/target-recurve-straight-bar.json --slope 20",
    holds: () => {
      const file = join(root, "scenes/target-recurve-straight-bar.json")
      expect(run([file, "--slope", "20"], readText)).toMatchObject({ status: 0, errors: "" })
    },
  },
  {
    words: "`--draw` takes 0 (brace) to 1 (full draw)",
    holds: () => expect(poseFields.draw).toMatchObject({ min: 0, max: 1 }),
  },
  {
    words: "exits with 0, or with 2 and the place and reason",
    holds: () => {
      const file = join(root, "scenes/short-hunting-rod.json")
      expect(run([file], readText).status).toBe(0)
      const broken = run(["odd.json"], () => ({ ok: true, text: '{"format": 3}' }))
      expect(broken.status).toBe(2)
      expect(broken.errors).toMatch(/^odd\.json: format: /)
    },
  },
  {
    words: "Splay 0° points straight back to the archer, 90° straight out",
    holds: () => {
      const [back, out] = [0, Math.PI / 2].map((splay) => armDirection(splay, 0, "right"))
      for (const [axis, value] of [-1, 0, 0].entries()) expect(back![axis]).toBeCloseTo(value, 12)
      for (const [axis, value] of [0, 0, 1].entries()) expect(out![axis]).toBeCloseTo(value, 12)
    },
  },
  {
    words: "on the shipped 68-inch bow each degree of elbow takes about 2 N·m from the lift",
    holds: () => {
      const { slopes, work } = longBow()
      expect(amoBowMm(work.stringLength!) / 25.4).toBeCloseTo(68, 1)
      expect((-slopes.perDegree).toFixed(0)).toBe("2")
    },
  },
  {
    words: "each millimetre of nock height gives 0.17 N·m",
    holds: () => expect(longBow().slopes.perMillimetre.toFixed(2)).toBe("0.17"),
  },
  {
    words: "is 0.5 for a straight line",
    holds: () => {
      const [force, way] = [180, 0.45]
      const underTheLine = (force * way) / 2
      expect(underTheLine / (force * way)).toBe(0.5)
    },
  },
  {
    words: "Measured recurves have 0.58 to 0.60",
    holds: () => {
      expect(Math.min(...MEASURED).toFixed(2)).toBe("0.58")
      expect(Math.max(...MEASURED).toFixed(2)).toBe("0.60")
    },
  },
  {
    words: "`?scene=target-recurve-68-inch` has it, and a fullness of 0.58",
    holds: () => {
      const { bow, work } = longBow()
      expect(bow).toMatchObject({ kind: "recurve", stringWrap: true })
      expect(work.fullness?.toFixed(2)).toBe("0.58")
    },
  },
  {
    words: "A bow is called by its string's length and 3 inches",
    holds: () => expect(amoBowMm(0)).toBeCloseTo(3 * 25.4, 12),
  },
  {
    words: "over slopes from −30° to 30°: 0 holds alike on every hill",
    holds: () => expect(FLATNESS_DEG).toBe(30),
  },
]

const developers: readonly Quote[] = [
  {
    words: "a mount's angles default to 0; the elbow to 3°",
    holds: () => {
      expect([mountFields.pitchDeg.fallback, mountFields.yawDeg.fallback]).toEqual([0, 0])
      expect(archerFields.elbowElevationDeg.fallback).toBe(3)
    },
  },
]

describe.each([
  ["README.md", readme],
  ["DEVELOPERS.md", developers],
])("%s", (document, quotes) => {
  it("quotes no number that is not tied to what it comes from", () => {
    expect(untiedNumbers(read(document), quotes)).toEqual([])
  })

  it("still has every passage that is tied here", () => {
    expect(staleQuotes(read(document), quotes)).toEqual([])
  })

  it.each(quotes.map(({ words, holds }) => [words, holds] as const))("says what is so: %s", (_, holds) => holds())
})

describe("the check of numbers", () => {
  const quotes = [{ words: "a rod of 730 mm", holds: () => {} }]

  it("finds a number that no quote answers for, wherever it stands", () => {
    expect(untiedNumbers("It is a rod of\n730 mm.", quotes)).toEqual([])
    expect(untiedNumbers("a rod of 730 mm and 28 g", quotes)).toHaveLength(1)
    expect(untiedNumbers("a rod of 7300 mm", quotes)).toHaveLength(1)
    expect(untiedNumbers("```sh\nreport --slope 20\n```\nnearly −0.5", quotes)).toHaveLength(2)
  })

  it("leaves names and the marks of lists alone", () => {
    expect(untiedNumbers("1. First\n2. In 3D, float64, `view3d`.", quotes)).toEqual([])
  })

  it("finds a quote that the document no longer has", () => {
    expect(staleQuotes("a rod of 710 mm", quotes)).toEqual(["a rod of 730 mm"])
  })
})
