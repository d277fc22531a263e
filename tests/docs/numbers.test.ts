/** Every number that the documents quote is tied here to what it comes from; a new one needs its line. */
import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { faces } from "../../src/clinic/nudge/asked"
import { stringStiffness } from "../../src/core/nudge"
import { ALIKE_SHARE } from "../../src/clinic/lessons/claims"
import { readLesson } from "../../src/clinic/lessons/read"
import { armDirection } from "../../src/core/rig"
import { amoBowMm } from "../../src/describe/bowLength"
import { liftSlopes } from "../../src/describe/liftText"
import { readText } from "../../src/report/readText"
import { run } from "../../src/report/run"
import { drawWork } from "../../src/scene/drawWork"
import { evaluate } from "../../src/scene/evaluate"
import { archerFields, mountFields, poseFields } from "../../src/scene/fields"
import { FLATNESS_DEG } from "../../src/scene/hills"
import { noseDrops, nudgeFields } from "../../src/scene/nudge"
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
  return { bow, slopes, work: work.value, fullDraw: evaluation.value.fullDraw }
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
    words: "where the arrow would have gone at 18, 30, 50 and 70 m",
    holds: () => expect(Object.keys(faces)).toEqual(["18", "30", "50", "70"]),
  },
  {
    words: "*String held* is 2·T·L²/ℓ against pitch and yaw",
    holds: () => expect(stringStiffness(130, 0.7, 0.9)).toBeCloseTo((2 * 130 * 0.7 ** 2) / 0.9, 12),
  },
  {
    words: "16 ms after the nudge unless you say otherwise",
    holds: () => expect(nudgeFields.leavesS.fallback).toBe(0.016),
  },
  {
    words: "A short rod is lighter in front and yet may drop faster",
    holds: () => {
      const text = read("scenes/target-recurve-straight-bar.json")
      const bows = [text, text.replace('"lengthMm": 730,', '"lengthMm": 580,')].map((each) => {
        const scene = parseScene(each)
        const evaluation = scene.ok ? evaluate(scene.value) : scene
        if (!evaluation.ok) throw new Error("not a bow")
        return evaluation.value
      })
      const drops = noseDrops(bows)
      if (!drops.ok) throw new Error("no drop")
      const [long, short] = drops.value
      expect(short!.bow.noseDown).toBeLessThan(long!.bow.noseDown)
      expect(short!.trace.angles.at(-1)![2]).toBeLessThan(long!.trace.angles.at(-1)![2])
    },
  },
  {
    words: "over slopes from −30° to 30°: 0 holds alike on every hill",
    holds: () => expect(FLATNESS_DEG).toBe(30),
  },
]

const exampleHolds = async () => {
  const example = /```json\n([\s\S]*?)```/.exec(read("README.md"))?.[1] ?? ""
  const lesson = await readLesson(example, async (name) => parseScene(read(`scenes/${name}.json`)))
  if (!lesson.ok) throw new Error(JSON.stringify(lesson.errors))
  const [{ asked }] = lesson.value.steps.slice(-1) as [(typeof lesson.value.steps)[number]]
  // What the goal asks lies between the two lengths of the example.
  expect(asked.now.figures.noseDownNm).toBeLessThan(0.6)
  expect(lesson.value.steps[0]?.asked.now.figures.noseDownNm).toBeGreaterThan(0.7)
}

const lessons: readonly Quote[] = [
  ...['"version": 1', '"front/rod:lengthMm": 300', '"between": [0.6, 0.7]'].map((words) => ({
    words,
    holds: exampleHolds,
  })),
  {
    words: "*Lessons* in the header has nine short ones",
    holds: () => expect(readdirSync(join(root, "scenes/lessons"))).toHaveLength(9),
  },
  { words: "`?lesson=4-droop`", holds: () => expect(read("scenes/lessons/4-droop.json")).toContain("Droop") },
  { words: "(by a fiftieth at most)", holds: () => expect(ALIKE_SHARE).toBe(1 / 50) },
]

const developers: readonly Quote[] = [
  {
    words: "The hold by the string is the plain 2·T·L²/ℓ",
    holds: () => expect(stringStiffness(130, 0.7, 0.9)).toBeCloseTo((2 * 130 * 0.7 ** 2) / 0.9, 12),
  },
  {
    words:
      "yaw alone would get 2·T·a·L/ℓ, where a is how far the string's ends are behind the grip: about half as much",
    holds: () => {
      // The work of both tensions when the bow yaws by φ and the nock stays: the bend of 2·T·ℓ(φ) at φ = 0.
      const [behind, out, draw, tension, step] = [0.31, 0.74, 0.67, 130, 1e-4]
      const length = (turn: number) => Math.hypot(draw - behind * Math.cos(turn), behind * Math.sin(turn), out)
      const bend = (2 * tension * 2 * (length(step) - length(0))) / step ** 2
      expect(bend).toBeCloseTo((2 * tension * behind * draw) / length(0), 4)
      const { fullDraw } = longBow()
      expect(-fullDraw.limbs.stringEnds[0][0] / fullDraw.limbs.draw).toBeCloseTo(0.5, 1)
    },
  },
  {
    words: "a mount's angles default to 0; the elbow to 3°",
    holds: () => {
      expect([mountFields.pitchDeg.fallback, mountFields.yawDeg.fallback]).toEqual([0, 0])
      expect(archerFields.elbowElevationDeg.fallback).toBe(3)
    },
  },
]

describe.each([
  ["README.md", [...readme, ...lessons]],
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
