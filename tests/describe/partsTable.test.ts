import { describe, expect, test } from "vitest"
import { partCard } from "../../src/describe/partCard"
import { partsTable } from "../../src/describe/partsTable"
import { evaluate } from "../../src/scene/evaluate"
import { asCompound } from "../../src/scene/otherKind"
import type { RecurveBow, Scene } from "../../src/scene/schema"
import { newArm, newElement, newScene } from "../../src/scene/templates"
import { defaultPreferences } from "../../src/state/preferences"

const metric = defaultPreferences
const imperial = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const

function evaluationOf(change: (scene: Scene) => void = () => undefined) {
  const scene = newScene()
  const bow = asCompound(scene.bow as RecurveBow)
  if (bow.ok) scene.bow = bow.value
  const vbar = { ...newElement.vbar, left: newArm(), right: newArm() }
  scene.rig.push({
    mount: "front",
    chain: [vbar, { ...newElement.rod, massG: 113.3 }, { ...newElement.weights, eachG: 27.7 }],
  })
  change(scene)
  const found = evaluate(scene)
  if (!found.ok) throw new Error("the scene is valid")
  return found.value
}

const number = (text: string) => Number(text.split("\u00a0")[0]!.replace("\u2212", "-"))

describe("the parts table", () => {
  test("has a line for every part and none besides", () => {
    const evaluation = evaluationOf()
    expect([...partsTable(evaluation, metric).lines.keys()]).toEqual(evaluation.now.parts.map(({ path }) => path))
  })

  test("adds up as shown, in either system of units", () => {
    for (const units of [metric, imperial]) {
      const { lines, total } = partsTable(evaluationOf(), units)
      for (const column of ["mass", "moment", "share"] as const) {
        const sum = [...lines.values()].reduce((so, line) => so + number(line[column]), 0)
        expect(sum).toBeCloseTo(number(total[column]), 6)
      }
    }
  })

  test("gives each part the share that the card beside it gives", () => {
    const evaluation = evaluationOf(({ bow }) => {
      bow.riser.massG = 1221
    })
    const { parts, noseDown } = evaluation.now
    // Rounded each by itself they would come to more than the whole.
    expect(parts.reduce((sum, part) => sum + Math.round((100 * part.noseDown) / noseDown), 0)).toBe(101)
    for (const [path, { share }] of partsTable(evaluation, metric).lines)
      expect(partCard(evaluation, path, metric)?.share).toBe(`${share} of the whole bow's`)
  })

  test("says where a part is with the unit once", () => {
    const line = partsTable(evaluationOf(), metric).lines.get("bow/riser")
    expect(line?.place.replaceAll("\u00a0", " ")).toBe("forward 18, up \u22125, side 0 mm")
    expect(line?.mass.replaceAll("\u00a0", " ")).toBe("1200 g")
  })

  test("gives the largest moment the longest bar, and parts behind the grip one the other way", () => {
    const { lines } = partsTable(evaluationOf(), metric)
    const bars = [...lines.values()].map(({ bar }) => bar)
    expect(Math.max(...bars.map(Math.abs))).toBe(1)
    expect(lines.get("front/weights")?.bar).toBeGreaterThan(0.3)
    expect(lines.get("front/vbar/left/weights")?.bar).toBeLessThan(0)
  })

  test("shares out no moment that is nearly nothing", () => {
    const level = evaluationOf((scene) => {
      scene.pose.slopeDeg = 90
      scene.rig = []
      scene.bow.centreLineMm = 0
      scene.bow.riser.centreMm = [18, 0, 0]
    })
    expect(Math.abs(level.now.noseDown)).toBeLessThan(0.05)
    const { lines, total } = partsTable(level, metric)
    expect(total.share).toBe("–")
    expect(lines.get("bow/riser")?.share).toBe("–")
  })
})
