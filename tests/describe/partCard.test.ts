import { describe, expect, it } from "vitest"
import { partCard } from "../../src/describe/partCard"
import { armLabel, groundLabel, turnLabel } from "../../src/describe/pictureWords"
import { evaluate } from "../../src/scene/evaluate"
import type { Scene } from "../../src/scene/schema"
import { newScene } from "../../src/scene/templates"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const imperial = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const

function evaluated(change: (scene: Scene) => void) {
  const scene = newScene()
  scene.accessories.push(
    { name: "ahead", massG: 300, centreMm: [500, 0, 0] },
    { name: "behind", massG: 200, centreMm: [-150, 0, 0] },
  )
  change(scene)
  const result = evaluate(scene)
  if (!result.ok) throw new Error(JSON.stringify(result.errors))
  return result.value
}

describe("the card beside a part", () => {
  it("says mass, moment about the grip and its share of the whole", () => {
    const evaluation = evaluated(() => {})
    const card = partCard(evaluation, "accessories/ahead", metric)!
    expect(card.title).toBe("ahead")
    expect(card.mass).toBe("300\u00a0g")
    // 0.3 kg × 9.80665 m/s² × 0.5 m.
    const share = Math.round((0.3 * 9.80665 * 0.5 * 100) / evaluation.now.noseDown)
    expect(card.moment).toBe("1.47\u00a0N·m nose-down")
    expect(card.share).toBe(`${share}\u00a0% of the whole bow's`)
  })

  it("calls a part behind the grip nose-up with a negative share, and follows the units", () => {
    const card = partCard(
      evaluated(() => {}),
      "accessories/behind",
      metric,
    )!
    expect(card.moment).toBe("0.29\u00a0N·m nose-up")
    expect(card.share).toMatch(/^\u2212\d+\u00a0% of the whole bow's$/)
    expect(
      partCard(
        evaluated(() => {}),
        "accessories/behind",
        imperial,
      )!.mass,
    ).toBe("7.05\u00a0oz")
  })

  it("says no share where the whole is about nothing", () => {
    const balanced = evaluated((scene) => {
      const { noseDown } = evaluated(() => {}).now
      // What is missing to zero, hung one metre behind the grip.
      scene.accessories.push({ name: "counter", massG: (noseDown / 9.80665) * 1000, centreMm: [-1000, 0, 0] })
    })
    expect(partCard(balanced, "accessories/ahead", metric)!.share).toBeNull()
  })

  it("is none for a part the scene has not", () =>
    expect(
      partCard(
        evaluated(() => {}),
        "front/rod",
        metric,
      ),
    ).toBeNull())
})

describe("labels in the picture", () => {
  it("say the arm forward and, where there is one, sideways", () => {
    expect(armLabel(62.3, 0.2, metric)).toBe("62\u00a0mm ahead")
    expect(armLabel(-8.2, 3.4, metric)).toBe("8\u00a0mm behind, 3\u00a0mm right")
    expect(armLabel(62.3, -7, imperial)).toBe("2.45\u00a0in ahead, 0.28\u00a0in left")
  })
  it("say a turn's multiple and a distance on the ground", () => {
    expect(turnLabel("pitch", 2.345)).toBe("pitch 2.3×")
    expect(turnLabel("yaw", Number.NaN)).toBe("yaw")
    expect(groundLabel(0.5, metric)).toBe("0.5\u00a0m")
    expect(groundLabel(0.508, imperial)).toBe("20\u00a0in")
  })
})
