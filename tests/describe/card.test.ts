import { readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { cardParts } from "../../src/describe/cardParts"
import { cardAccessories, cardBow, cardDrawn, cardHeld, cardMeasured, cardTarget } from "../../src/describe/cardText"
import { evaluate } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import { measureResult } from "../../src/scene/measure"
import { parseScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"

const METRIC = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const IMPERIAL = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const

function shipped(id: string): Scene {
  const read = parseScene(readFileSync(join(import.meta.dirname, `../../scenes/${id}.json`), "utf8"))
  if (!read.ok) throw new Error(`${id} is not valid`)
  return read.value
}
function evaluated(scene: Scene) {
  const evaluation = evaluate({ ...scene, pose: { draw: 0, slopeDeg: 0, cantDeg: 0 } })
  if (!evaluation.ok) throw new Error("cannot be strung")
  return evaluation.value
}
const drooped = () => shipped("target-recurve-drooped-bar")

describe("the parts list of a card", () => {
  test("goes from mount to mount, inside out, with a pair of like arms once", () => {
    const groups = cardParts(evaluated(drooped()), METRIC)
    expect(groups.map(({ title }) => title.replaceAll("\u00a0", " "))).toEqual([
      "Front mount, 42 mm ahead, 72 mm below",
      "Both side arms: splay 46°, droop 28°",
    ])
    const rows = groups.flatMap((group) => group.rows)
    expect(rows.map(({ number }) => number)).toEqual(rows.map((_, index) => index + 1))
    const weights = rows.at(-1)!
    expect(weights.setting.replaceAll("\u00a0", " ")).toBe("6 × 28 g")
    expect(weights.mass.replaceAll("\u00a0", " ")).toBe("2 × 168 g")
    expect(weights.paths).toHaveLength(2)
  })

  test("says where each part screws in, as far as the parts before it are long", () => {
    const [front] = cardParts(evaluated(drooped()), METRIC)
    // The mount is 42 mm ahead; extender 127 mm, V-bar 32 mm, rod 730 mm, damper 22 mm follow each other.
    const ahead = front!.rows.map(({ screw }) => screw?.[0])
    expect(ahead).toEqual(["42", "169", "201", "931", "953"])
    expect(front!.rows.map(({ screw }) => screw?.[2])).toEqual(["0", "0", "0", "0", "0"])
  })

  test("lists arms that differ each by itself", () => {
    const scene = structuredClone(drooped())
    const vbar = scene.rig[0]!.chain[1]!
    if (vbar.part !== "vbar" || vbar.left === undefined) throw new Error("the shipped scene has another rig")
    vbar.left.splayDeg = 37
    const titles = cardParts(evaluated(scene), METRIC).map(({ title }) => title)
    expect(titles.slice(1)).toEqual(
      ["Left side arm: splay 37°, droop 28°", "Right side arm: splay 46°, droop 28°"].map((t) =>
        t.replace(" side", ""),
      ),
    )
  })

  test("has settings in the chosen units, and every part of the rig", () => {
    for (const id of ["field-recurve-swinging-weights", "compound-front-and-back-bar", "barebow-riser-weights"]) {
      const evaluation = evaluated(shipped(id))
      const groups = cardParts(evaluation, IMPERIAL)
      const listed = groups.flatMap(({ rows }) => rows.flatMap(({ paths }) => paths))
      const rig = evaluation.now.parts.map(({ path }) => path).filter((path) => !/^(bow|accessories)\//.test(path))
      expect(listed.sort()).toEqual(rig.sort())
      for (const { setting } of groups.flatMap(({ rows }) => rows)) expect(setting).toMatch(/\u00a0(in|oz)/)
    }
  })
})

describe("the figures of a card", () => {
  test("are those of the report, in the chosen units, with ± where it is known", () => {
    const evaluation = evaluated(drooped())
    const { massG, fullDraw } = figuresOf(evaluation)
    const held = cardHeld(evaluation, { massG: 3, "centreMm.forward": Number.POSITIVE_INFINITY }, METRIC)
    expect(held[0]).toMatchObject({
      key: "massG",
      value: `${massG.toFixed(0)}\u00a0g`,
      note: expect.stringMatching(/^±\u00a03/),
    })
    expect(held[1]?.note).toBe("±\u00a0?")
    expect(held.find(({ key }) => key === "inertiaGrip.yaw")?.note).toMatch(/^[\d.]+× bare bow$/)
    const net = cardDrawn(evaluation, null, METRIC).find(({ key }) => key === "fullDraw.netLiftNm")
    expect(net).toMatchObject({ value: `${fullDraw.netLiftNm.toFixed(2)}\u00a0N·m`, note: "front rises" })
    expect(cardHeld(evaluation, null, IMPERIAL)[0]?.value).toMatch(/\u00a0oz$/)
  })

  test("stand against every aim of the setup, by how much where one is missed", () => {
    expect(cardTarget(evaluated(drooped()), null, METRIC).map(({ key, note }) => [key, note])).toEqual([
      ["centreMm.forward", "inside"],
      ["centreMm.up", "inside"],
      ["centreMm.side", "inside"],
      ["massG", "within"],
    ])
    const [forward] = cardTarget(evaluated({ ...drooped(), target: { forwardMm: [20, 30] } }), null, METRIC)
    expect(forward?.note).toMatch(/mm too far forward$/)
    const open = { "centreMm.forward": Number.POSITIVE_INFINITY }
    const [assumed] = cardTarget(evaluated({ ...drooped(), target: { forwardMm: [20, 30] } }), open, METRIC)
    expect(assumed!.note).toBe(`${forward!.note}, if the riser is as assumed`)
    expect(cardTarget(evaluated({ ...drooped(), target: {} }), null, METRIC)).toEqual([])
  })

  test("name the bow and what else is on it", () => {
    expect(cardBow(drooped(), METRIC).replaceAll("\u00a0", " ")).toBe(
      "Recurve, 40 lbf, draw length 665 mm, brace height 220 mm, nock height 48 mm, right-handed",
    )
    expect(cardBow(shipped("compound-front-and-back-bar"), METRIC).replaceAll("\u00a0", " ")).toMatch(
      /^Compound, 52 lbf peak, 70 % let-off, /,
    )
    expect(cardAccessories(drooped(), METRIC).replaceAll("\u00a0", " ")).toBe("sight 230 g; plunger 22 g; clicker 9 g")
  })
})

test("a card says whether its numbers were measured or assumed", () => {
  expect(cardMeasured(drooped(), null)).toMatch(/^Assumed: every number is as it was entered/)
  const measurements = [
    { kind: "scale", on: "riser", massG: 1234, errorG: 2, excluded: false, note: "", date: "" },
  ] as unknown as NonNullable<Scene["measurements"]>
  const read = { ...drooped(), measurements }
  const result = measureResult(read)
  if (result === null || !result.ok) throw new Error("the reading counts for nothing")
  expect(cardMeasured(read, result.value)).toMatch(/^Assumed: the figures do not use the 1 reading that/)
  const applied = { ...read, bow: { ...read.bow, riser: result.value.riser } } as Scene
  const again = measureResult(applied)
  if (again === null || !again.ok) throw new Error("the reading counts for nothing")
  expect(cardMeasured(applied, again.value)).toMatch(
    /^Measured: the riser is fitted to 1 reading .*As assumed: riser centre/,
  )
})
