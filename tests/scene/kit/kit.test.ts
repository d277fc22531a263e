import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { errorLine } from "../../../src/scene/errors"
import { kitFromTable, kitTable, parseKit, piecesIn, readKit, serializeKit } from "../../../src/scene/kit"
import { kitDocument } from "./kits"

const folder = join(import.meta.dirname, "../../../scenes/kits")
const shipped = readdirSync(folder).filter((name) => name.endsWith(".json"))
const lines = (result: ReturnType<typeof readKit>) => (result.ok ? [] : result.errors.map(errorLine))
const kitOf = (result: ReturnType<typeof readKit>) => {
  if (!result.ok) throw new Error(lines(result).join("\n"))
  return result.value
}

describe("the file", () => {
  test.each(shipped)("%s opens, says that it is invented, and is written back as it was read", (name) => {
    const kit = kitOf(parseKit(readFileSync(join(folder, name), "utf8")))
    expect(kit.notes).toMatch(/invented/)
    expect(kitOf(parseKit(serializeKit(kit)))).toEqual(kit)
  })

  test("lists and keys that are left out take their defaults", () => {
    const kit = kitOf(readKit({ format: "bow-balance-bench-kit", version: 1, name: "bare" }))
    expect(kit).toMatchObject({ notes: "", rods: [], extenders: [], vbars: [], dampers: [], discs: [] })
    const { rods, vbars } = kitOf(readKit(kitDocument()))
    expect(rods[1]).toMatchObject({ use: "any", innerMm: 0 })
    expect(vbars[1]!.splayDeg.step).toBe(1)
  })

  test("what is no kit, or newer than this bench, is refused as a whole", () => {
    expect(lines(readKit([]))).toEqual(["a list of 0 given; a kit is one JSON object"])
    expect(lines(readKit({ format: "bow-balance-bench" }))).toEqual([
      'format: "bow-balance-bench" given; a kit file says "bow-balance-bench-kit"',
    ])
    expect(lines(readKit({ ...kitDocument(), version: 3 }))[0]).toMatch(/^version: 3 given; this bench reads up to 1/)
    expect(lines(parseKit("{"))[0]).toMatch(/^not JSON: line 1/)
  })

  test("every error names its place, what was given and what is allowed", () => {
    const document = kitDocument()
    document.rods[0] = { ...document.rods[0], massG: -2, colour: "red" }
    document.discs[0] = { ...document.discs[0], count: 2.5 }
    expect(lines(readKit(document))).toEqual([
      "rods[0].massG: -2 given; a number in 0 … 2000 g is needed",
      "rods[0].colour: is not a key of this format; check its spelling",
      "discs[0].count: 2.5 given; a whole number in 0 … 120 is needed",
    ])
  })

  test("a bore as wide as its tube, and angles that run backwards, are contradictions", () => {
    const document = kitDocument()
    document.rods[0] = { ...document.rods[0], innerMm: 18 }
    document.vbars[0] = { ...document.vbars[0], droopDeg: { from: 7, to: 3 } }
    expect(lines(readKit(document))).toEqual([
      "rods[0].innerMm: 18 given; less than the outer diameter, 18 mm, is needed",
      "vbars[0].droopDeg.to: 3 given; no less than 7° is needed",
    ])
  })
})

test("pieces of all kinds are counted together", () => {
  expect(piecesIn(kitOf(readKit(kitDocument())))).toBe(2 + 3 + 1 + 1 + 1 + 2 + 7 + 5)
})

describe("the table", () => {
  test("a kit written as a table is read back as it was", () => {
    const kit = { ...kitOf(readKit(kitDocument())), notes: "" }
    expect(kitOf(kitFromTable(kitTable(kit), kit.name))).toEqual(kit)
  })

  test("semicolons, decimal commas, quotes, empty lines and any order of columns are understood", () => {
    const text =
      '\uFEFFName;PIECE;count;massG;lengthMm;outerMm\r\n"a ""long"";\nrod";rod;2;61,5;250;17\r\n\r\nx;Extender;1;43;75;20\n'
    const kit = kitOf(kitFromTable(text, "typed"))
    expect(kit.rods).toMatchObject([{ name: 'a "long";\nrod', count: 2, massG: 61.5, use: "any" }])
    expect(kit.extenders).toMatchObject([{ name: "x", lengthMm: 75 }])
  })

  test("an angle with its first value only is fixed", () => {
    const text =
      "piece,name,count,massG,lengthMm,outerMm,armOffsetMm,splayDeg.from,droopDeg.from\nvbar,v,1,90,30,28,20,35,5\n"
    expect(kitOf(kitFromTable(text, "")).vbars[0]).toMatchObject({
      splayDeg: { from: 35, to: 35 },
      droopDeg: { from: 5, to: 5 },
    })
  })

  test("errors name line and column", () => {
    const head = "piece,name,count,massG,lengthMm,outerMm\n"
    expect(lines(kitFromTable(`${head}\nrod,a,2,heavy,250,17\nrod,b,2,61,250,17\nball,c,1,2,3,5\n`, ""))).toEqual([
      'line 3, massG: "heavy" given; a number in 0 … 2000 g is needed',
      'line 5, piece: "ball" given; one of rod, extender, vbar, damper, discs is needed',
    ])
    expect(lines(kitFromTable(`${head}\nrod,a,2,heavy,250,17\nrod,,2,61,,17\n`, ""))).toEqual([
      'line 3, massG: "heavy" given; a number in 0 … 2000 g is needed',
      "line 4, name: is missing; text in quotes is needed",
      "line 4, lengthMm: is missing; a number in 1 … 2000 mm is needed",
    ])
    expect(lines(kitFromTable(`${head}discs,d,2,28,5,25\nrod,a,2,heavy,250,17\nball,c,1,2,3,5\n`, ""))).toEqual([
      "line 2, eachG: is missing; a number in 0 … 1000 g is needed",
      "line 2, thicknessMm: is missing; a number in 0.1 … 200 mm is needed",
      "line 2, massG: this column belongs to rod, extender, vbar and damper; leave it empty on a line of discs",
      "line 2, lengthMm: this column belongs to rod, extender, vbar and damper; leave it empty on a line of discs",
      'line 3, massG: "heavy" given; a number in 0 … 2000 g is needed',
      'line 4, piece: "ball" given; one of rod, extender, vbar, damper, discs is needed',
    ])
    expect(
      lines(kitFromTable("piece,name,count,massG,lengthMm,outerMm,eachG,use\nrod,a,2,61,250,17,5,\n", "")),
    ).toEqual(["line 2, eachG: this column belongs to discs; leave it empty on a line of rod"])
    expect(lines(kitFromTable("piece,weight\n", ""))[0]).toMatch(/^line 1, column 2: "weight" is not a column of a kit/)
    expect(lines(kitFromTable("name,count\n", ""))).toEqual(['line 1: the column "piece" is missing'])
    expect(lines(kitFromTable("", ""))[0]).toMatch(/empty|piece/)
  })
})
