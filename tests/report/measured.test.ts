import { describe, expect, test } from "vitest"
import { run } from "../../src/report/run"
import type { Measurement } from "../../src/scene/schema"
import { serializeScene } from "../../src/scene/serialize"
import { fullDocument } from "../scene/documents"
import { hung, onBow, weighed, wholeSession } from "../scene/measure/sessions"
import { sceneOf } from "../scene/scenes"

const scene = sceneOf(fullDocument())
const report = (measurements: Measurement[], riser = scene.bow.riser, ...flags: string[]) => {
  const text = serializeScene({ ...scene, bow: { ...scene.bow, riser }, measurements })
  const { output, errors } = run(["it.json", ...flags], () => ({ ok: true, text }))
  expect(errors).toBe("")
  return output
}
const measured = (measurements: Measurement[], riser = scene.bow.riser) =>
  JSON.parse(report(measurements, riser, "--json")).measured
const section = (text: string) => text.split("\n\n").find((each) => each.startsWith("Measured"))

describe("a scene that was measured", () => {
  test("reports the fitted riser, how well it is known, and the ± of its numbers", () => {
    const found = measured(wholeSession(scene, onBow))
    expect(found).toMatchObject({ converged: true, applied: true, known: { mass: "yes", pitch: "yes" }, freedom: 2 })
    expect(found.riser.massG).toBeCloseTo(scene.bow.riser.massG, 6)
    expect(found.within95.massG).toBeGreaterThan(5)
    expect(found.readings.map((each: { kind: string }) => each.kind)).toEqual(
      wholeSession(scene, onBow).map(({ kind }) => kind),
    )
    expect(found.next).toMatchObject({ kind: "hang" })
    const text = section(report(wholeSession(scene, onBow)))
    expect(text).toContain("Measured: 7 readings")
    expect(text).toContain("riser mass                       1700.0 g, measured")
    expect(text).toMatch(/mass {24}3856\.0 g, ± 7\.8 g/)
    expect(text).toContain("The scene has this riser.")
    expect(text).toContain("Next, hang the bow from:")
  })

  test("says what is not determined, and never a number for it", () => {
    const found = measured([weighed(scene, onBow), hung(scene, onBow, [-190, 210, 0])])
    expect(found.known).toMatchObject({ mass: "yes", forward: "partly", pitch: "no" })
    expect(found.within95["centreMm.forward"]).toBeNull()
    const text = section(report([weighed(scene, onBow), hung(scene, onBow, [-190, 210, 0])]))
    expect(text).toMatch(/balance point forward .* not determined/)
    expect(text).toMatch(/radius of gyration, pitch .* not measured; kept as assumed/)
    expect(text).toMatch(/The readings alone do not determine the balance point .* It is assumed to be within/)
  })

  test("says when its riser is another one, and which readings may be far off, and how many are left out", () => {
    const session = wholeSession(scene, onBow)
    const wrong = { ...hung(scene, onBow, [77, 300, 5]), slopeDeg: 19 } as Measurement
    const left = { ...weighed(scene, onBow), excluded: true }
    const text = section(report([...session, wrong, left], { ...scene.bow.riser, massG: 1650 }))
    expect(text).toContain("Measured: 8 readings, 1 left out")
    expect(text).toContain("The scene has another riser")
    // Three hangs, one of them wrong: any two agree.
    expect(text).toMatch(/^ {2}8\. Hung.*\(may be far off: take it again\)$/m)
    expect(text).toContain("Reading 2, reading 3 or reading 8: one of them is far off; take all of them again.")
    const fourth = hung(scene, onBow, [40, -310, 41])
    const found = measured([...session, wrong, fourth])
    expect(found.doubtful).toBe(true)
    expect(found.readings.map((each: { suspect: boolean }) => each.suspect).indexOf(true)).toBe(7)
    expect(section(report([...session, wrong, fourth]))).toContain("Reading 8 is far off: without it the others agree.")
  })
})

test("an aim is judged with a caution where the measured bow's number is not determined, and without one where it is", () => {
  const aims = (measurements: Measurement[]) =>
    report(measurements)
      .split("\n\n")
      .find((each) => each.startsWith("Against the target"))!
      .split("\n")
  const open = aims([weighed(scene, onBow)])
  expect(open.find((line) => line.includes("balance point forward"))).toMatch(/, if the riser is as assumed$/)
  expect(open.find((line) => /^ {2}mass/.test(line))).not.toContain("assumed")
  expect(aims(wholeSession(scene, onBow)).join(" ")).not.toContain("assumed")
})

test("a scene that was not measured has neither key nor section", () => {
  const { measurements: _, ...bare } = { ...scene, measurements: undefined }
  const output = (...flags: string[]) =>
    run(["it.json", ...flags], () => ({ ok: true, text: serializeScene(bare) })).output
  expect(JSON.parse(output("--json"))).not.toHaveProperty("measured")
  expect(section(output())).toBeUndefined()
})
