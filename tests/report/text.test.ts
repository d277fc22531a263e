import { describe, expect, test } from "vitest"
import { run } from "../../src/report/run"
import { arm, type Document, discs, fullDocument, rigged, rod, smallestDocument, swing, vbar } from "../scene/documents"

const sheet = (document: Document, ...flags: string[]) => {
  const { output, errors } = run(["it.json", ...flags], () => ({ ok: true, text: JSON.stringify(document) }))
  expect(errors).toBe("")
  return output
}
const figures = (document: Document, ...flags: string[]) => JSON.parse(sheet(document, "--json", ...flags))
/** The lines of one section, without its heading. */
const section = (text: string, heading: RegExp) => {
  const found = text.split("\n\n").find((each) => heading.test(each.split("\n")[0]!))
  return found?.trimEnd().split("\n").slice(1)
}
const numbers = (line: string) =>
  line
    .trim()
    .split(/\s{2,}/)
    .slice(1)
    .map(Number)

describe("the heading", () => {
  test("says name, file, bow and how it is held", () => {
    expect(sheet(fullDocument()).split("\n").slice(0, 4)).toEqual([
      "everything",
      "  it.json",
      "  Compound, 47 lbf peak, 65 % let-off, 690 mm draw (28.9 in AMO), right-handed.",
      "  Held at brace, front raised 15°, canted 4° right.",
    ])
  })

  test("says the other ways to hold it", () => {
    const held = (...flags: string[]) => sheet(fullDocument(), ...flags).split("\n")[3]
    expect(held("--draw", "0.5", "--slope", "-20", "--cant", "-3")).toBe(
      "  Held drawn to 440.0 mm (50.0 % of the way), front lowered 20°, canted 3° left.",
    )
    expect(held("--draw", "1", "--slope", "0", "--cant", "0")).toBe("  Held at full draw, level, upright.")
  })
})

describe("the parts", () => {
  const rows = (document: Document) => section(sheet(document), /^Parts/)!.slice(1)

  test("are all there, in order, with the whole last", () => {
    const names = rows(fullDocument()).map((line) => line.trim().split(/\s{2,}/)[0])
    expect(names).toEqual([...figures(fullDocument()).parts.map((part: { path: string }) => part.path), "whole bow"])
    expect(names).toContain("front/weights#2")
    expect(names).toContain("accessories/sight#2")
  })

  test("masses and moments add up to the whole as shown, even where each alone would round otherwise", () => {
    const thirds = rigged({
      front: [discs({ count: 1, eachG: 33.34 }), rod({ massG: 33.34 }), discs({ count: 1, eachG: 33.34 })],
    })
    for (const document of [thirds, fullDocument()]) {
      const shown = rows(document).map(numbers)
      const whole = shown.pop()!
      for (const column of [0, 4]) {
        const total = shown.reduce((sum, row) => sum + row[column]!, 0)
        expect(total).toBeCloseTo(whole[column]!, 9)
      }
      expect(whole[0]).toBeCloseTo(figures(document).massG, 0)
    }
  })

  test("every shown figure is within one unit of its last place", () => {
    const { parts } = figures(fullDocument())
    rows(fullDocument())
      .slice(0, -1)
      .forEach((line, index) => {
        const [mass, x, y, z, moment] = numbers(line)
        const part = parts[index]
        expect(Math.abs(mass! - part.massG)).toBeLessThan(0.1)
        expect(Math.abs(moment! - part.noseDownNm)).toBeLessThan(0.001)
        for (const [shown, is] of [
          [x, part.centreMm[0]],
          [y, part.centreMm[1]],
          [z, part.centreMm[2]],
        ]) {
          expect(Math.abs(shown - is)).toBeLessThanOrEqual(0.05 + 1e-9)
        }
      })
  })

  test("columns stay in line under long and foreign names, and a long name gives way in its middle", () => {
    const name = `${"sehr lange Zielvorrichtung ".repeat(4)}Ä🏹`
    const lines = section(
      sheet({ ...smallestDocument(), accessories: [{ name, massG: 2, centreMm: [3, 5, 7] }] }),
      /^Parts/,
    )!
    const widths = new Set(lines.map((line) => [...line].length))
    expect(widths.size).toBe(1)
    expect(lines.some((line) => line.includes("…") && line.includes("Ä🏹"))).toBe(true)
  })
})

describe("the balance", () => {
  test("says every sign in words", () => {
    const document = rigged({ back: [rod({ lengthMm: 900, massG: 300 }), discs({ count: 9, eachG: 90 })] })
    const lines = section(sheet(document), /^Balance/)!
    const { centreMm } = figures(document)
    expect(centreMm[0]).toBeLessThan(0)
    expect(lines[0]).toContain(`${(-centreMm[0]).toFixed(1)} mm back, ${(-centreMm[1]).toFixed(1)} mm down, `)
    expect(lines[1]).toContain("mm behind")
    expect(lines[2]).toMatch(/lowers the front by +-\d/)
  })

  test("never shows a negative zero", () => {
    expect(sheet(smallestDocument())).not.toMatch(/-0\.0+(?!\d)/)
  })
})

describe("turn resistance", () => {
  test("stands beside the bow without its rig, with the multiple", () => {
    const { inertiaGrip, stripped } = figures(fullDocument())
    const lines = section(sheet(fullDocument()), /^Turn/)!
    const pitch = numbers(lines[1]!)
    expect(lines[1]).toContain("pitch")
    expect(pitch[0]).toBeCloseTo(inertiaGrip[2][2], 4)
    expect(pitch[1]).toBeCloseTo(stripped.inertiaGrip[2][2], 4)
    expect(pitch[2]).toBeCloseTo(inertiaGrip[2][2] / stripped.inertiaGrip[2][2], 2)
  })

  test("the swing weight's free row and its lean appear with one only", () => {
    expect(sheet(fullDocument())).toContain("swinging weights free")
    expect(sheet(fullDocument())).toMatch(/back\/swing: 15\.\d° back\./)
    expect(sheet(smallestDocument())).not.toMatch(/swing/)
  })

  test("a swing weight on its stop is said to count as locked", () => {
    const stopped = rigged({ back: [swing({ stopDeg: 10 })] }, { pose: { slopeDeg: 30 } })
    expect(sheet(stopped)).toContain("back/swing: 10.0° back; it leans on its stop and counts as locked.")
  })

  test("a ball-jointed weight under cant hangs to the side", () => {
    const canted = rigged({ lower: [swing({ joint: "ball" })] }, { pose: { cantDeg: 20 } })
    expect(sheet(canted)).toContain("lower/swing: 20.0° right.")
  })
})

describe("full draw", () => {
  test("lift less weight is the net, as shown", () => {
    const value = (label: string) =>
      Number(
        new RegExp(`${label} +([+-]?[\\d.]+)`).exec(
          section(sheet(fullDocument()), /^Full draw, level/)!.join("\n"),
        )![1],
      )
    const [lift, weight, net] = [value("lifts the front by"), value("lowers the front by"), value("net lift")]
    expect(lift - weight).toBeCloseTo(net, 9)
    expect(net).toBeCloseTo(figures(fullDocument()).fullDraw.netLiftNm, 2)
  })

  test("every slope's net and weight add up to the same lift as shown", () => {
    const rows = section(sheet(fullDocument()), /slopes/)!
      .slice(1)
      .map(numbers)
    expect(rows).toHaveLength(19)
    const lifts = new Set(rows.map(([noseDown, net]) => (noseDown! + net!).toFixed(3)))
    expect(lifts.size).toBe(1)
  })

  test("a compound's curve between its ends is said to be a sketch", () => {
    const text = sheet(smallestDocument())
    expect(text).toContain("Draw force (a sketch between its ends, see below)")
    expect(text).toContain("Cams are not modelled")
    const rows = section(text, /^Draw force/)!
    expect(rows[1]!.trim()).toMatch(/^190\.0 +0\.0 +0\.0$/)
    expect(rows.at(-1)!.trim()).toMatch(/^690\.0 +73\.2 +16\.4$/)
  })
})

describe("the target", () => {
  test("is compared where the scene states one, with the miss and its side", () => {
    const document = { ...smallestDocument(), target: { forwardMm: [20, 30], upMm: [-400, 400], massMaxG: 2000 } }
    const { centreMm, massG } = figures(document)
    expect(section(sheet(document), /^Against the target/)).toEqual([
      `  balance point forward  ${centreMm[0].toFixed(1)} mm, wanted 20 … 30 mm: ${(centreMm[0] - 20).toFixed(1)} mm outside`,
      `  balance point up       ${centreMm[1].toFixed(1)} mm, wanted -400 … 400 mm: inside`,
      `  mass                   ${massG.toFixed(1)} g, wanted 0 … 2000 g: +${(massG - 2000).toFixed(1)} g outside`,
    ])
  })

  test("is not mentioned where there is none", () => {
    expect(sheet(smallestDocument())).not.toContain("target")
  })

  test("a miss too small for the usual digits is shown with more of them, never as nothing", () => {
    const { massG } = figures(smallestDocument())
    const line = section(sheet({ ...smallestDocument(), target: { massMaxG: massG - 0.002 } }), /^Against/)![0]
    expect(line).toContain("+0.002 g outside")
  })
})

describe("the cautions", () => {
  test("name a rod that carries more than its maker rates it for, counting what hangs on it anywhere beyond", () => {
    const chain = (maxEndWeightG: number) => [
      rod({ maxEndWeightG }),
      vbar({ left: arm(30, 5, [discs({ count: 2, eachG: 31 })]) }),
      discs({ count: 3, eachG: 37 }),
    ]
    const carried = 97 + 2 * 31 + 3 * 37
    expect(sheet(rigged({ front: chain(carried - 1) }))).toContain(
      `front/rod carries ${carried}.0 g beyond it; its maker rates it for ${carried - 1} g.`,
    )
    expect(sheet(rigged({ front: chain(carried) }))).not.toContain("carries")
  })

  test("count for a rod on an arm only what is on that arm", () => {
    const document = rigged({
      front: [
        vbar({ right: arm(30, 5, [rod({ maxEndWeightG: 50 }), discs({ count: 2, eachG: 31 })]) }),
        discs({ count: 9 }),
      ],
    })
    expect(sheet(document)).toContain("front/vbar/right/rod carries 62.0 g beyond it; its maker rates it for 50 g.")
  })

  test("say the rod's rule only to a bow with a rod, and the rest to everybody", () => {
    expect(sheet(smallestDocument())).not.toContain("overloaded rod")
    expect(sheet(fullDocument())).toContain("overloaded rod")
    for (const text of [sheet(smallestDocument()), sheet(fullDocument())]) {
      expect(text).toContain("Never release a drawn bow without an arrow")
      expect(text).toContain("range officer")
    }
  })
})

test("sheets of several files stand apart by an empty line", () => {
  const { output } = run(["a.json", "b.json"], () => ({ ok: true, text: JSON.stringify(smallestDocument()) }))
  expect(output.split("smallest\n  ")).toHaveLength(3)
  expect(output).toContain("\n\nsmallest\n  b.json\n")
})

test("a name with control characters is defused", () => {
  expect(sheet({ ...smallestDocument(), name: "a\u001b[2Jb\nc" }).split("\n")[0]).toBe("a\ufffd[2Jb\ufffdc")
})
