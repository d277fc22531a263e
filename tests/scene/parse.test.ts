/** Every way a file can be wrong is answered with its place, what was given and what is allowed. */
import { describe, expect, test } from "vitest"
import { errorLine } from "../../src/scene/errors"
import { parseScene } from "../../src/scene/parse"
import { slotsOf } from "../../src/scene/slots"
import {
  arm,
  type Document,
  discs,
  fullDocument,
  recurveBow,
  rigged,
  rod,
  smallestDocument,
  swing,
  vbar,
} from "./documents"

const parse = (document: unknown) => parseScene(typeof document === "string" ? document : JSON.stringify(document))
const errors = (document: unknown) => {
  const result = parse(document)
  return result.ok ? [] : result.errors
}
const lines = (document: unknown) => errors(document).map(errorLine)
const codes = (document: unknown) => errors(document).map((error) => error.code)

/** The smallest compound with one place of it replaced, or removed where no value is given. */
const changed = (path: string, value?: unknown, base: Document = smallestDocument()): Document => {
  const document = structuredClone(base)
  const steps = path.split(".")
  const last = steps.pop()!
  const holder = steps.reduce<Record<string, unknown>>((node, step) => node[step] as Record<string, unknown>, document)
  if (value === undefined) delete holder[last]
  else holder[last] = value
  return document
}

describe("a valid file", () => {
  test.each([
    ["with required keys only", smallestDocument()],
    ["with everything", fullDocument()],
    ["of a recurve", changed("bow", recurveBow())],
    ["of a recurve with its string on the limb", changed("bow", { ...recurveBow(), stringWrap: true })],
  ])("%s is read", (_, document) => {
    expect(lines(document)).toEqual([])
  })

  test("may leave out just the numbers that their fields say it may", () => {
    for (const base of [smallestDocument(), fullDocument(), changed("bow", recurveBow())]) {
      const read = parse(base)
      if (!read.ok) throw new Error(lines(base).join())
      for (const { key, field, address, absent } of slotsOf(read.value)) {
        const without = absent ? read.value : changed(address.join("."), undefined, read.value)
        const allowed = field.optional === true || field.fallback !== undefined
        expect([key, parse(without).ok]).toEqual([key, allowed])
      }
    }
  })

  test("gets every documented default for what it leaves out", () => {
    const result = parse(smallestDocument())
    expect(result.ok && result.value).toMatchObject({
      notes: "",
      bow: { hand: "right", limbs: { gyrationMm: [0, 0, 0] } },
      accessories: [],
      mounts: {},
      rig: [],
      archer: { elbowElevationDeg: 3 },
      target: {},
      pose: { draw: 0, slopeDeg: 0, cantDeg: 0 },
    })
    const sparse = parse(
      rigged({ front: [vbar(), rod({ innerMm: undefined })], back: [swing()], lower: undefined as never }),
    )
    expect(sparse.ok && sparse.value).toMatchObject({
      mounts: { front: { pitchDeg: 0, yawDeg: 0 } },
      rig: [
        { chain: [{ part: "vbar" }, { part: "rod", innerMm: 0 }] },
        { chain: [{ part: "swing", frictionNmm: 0, damping: 0 }] },
        { mount: "lower", chain: [] },
      ],
    })
    const recurve = parse(changed("bow", recurveBow()))
    expect(recurve.ok && recurve.value.bow).toMatchObject({ kind: "recurve", stringWrap: false })
  })

  test("may begin with a byte-order mark", () => {
    expect(lines(`\uFEFF${JSON.stringify(smallestDocument())}`)).toEqual([])
  })

  test("may stand at either end of a range", () => {
    for (const [path, low, high] of [
      ["bow.drawWeightLbf", 1, 150],
      ["bow.letOffPercent", 0, 99],
      ["bow.riser.massG", 1, 10_000],
    ] as const) {
      expect(lines(changed(path, low))).toEqual([])
      expect(lines(changed(path, high))).toEqual([])
    }
  })
})

describe("an unknown key is named with its whole path", () => {
  const words = "is not a key of this format; check its spelling"
  test.each([
    ["at the top", changed("bwo", 3), "bwo"],
    ["in the bow", changed("bow.riser.masG", 3), "bow.riser.masG"],
    ["of the other kind of bow", changed("bow", { ...recurveBow(), letOffPercent: 5 }), "bow.letOffPercent"],
    ["in a chain", rigged({ front: [discs(), rod({ lenghtMm: 2 })] }), "rig[0].chain[1].lenghtMm"],
    ["of another part", rigged({ front: [discs({ maxEndWeightG: 2 })] }), "rig[0].chain[0].maxEndWeightG"],
    ["on an arm", rigged({ front: [vbar({ left: { ...arm(30, 5, []), spaly: 3 } })] }), "rig[0].chain[0].left.spaly"],
    ["in a mount", changed("mounts", { front: { atMm: [2, 3, 5], rollDeg: 7 } }), "mounts.front.rollDeg"],
    ["as a mount", changed("mounts", { side: { atMm: [2, 3, 5] } }), "mounts.side"],
  ])("%s", (_, document, path) => {
    expect(errors(document)).toEqual([{ code: "unknown-key", path, message: words }])
  })

  test("even one with a special meaning to JavaScript, wherever it stands", () => {
    const text = JSON.stringify(rigged({ front: [rod()] }))
    expect(lines(text.replace("{", '{"__proto__":{"name":"x"},'))).toEqual([`__proto__: ${words}`])
    expect(lines(text.replace('"riser":{', '"riser":{"__proto__":{"massG":5},'))).toEqual([
      `bow.riser.__proto__: ${words}`,
    ])
    expect(lines(text.replace('"part":"rod"', '"part":"rod","__proto__":5'))).toEqual([
      `rig[0].chain[0].__proto__: ${words}`,
    ])
    expect(lines(changed("constructor", 2))).toEqual([`constructor: ${words}`])
    expect(({} as Record<string, unknown>).massG).toBeUndefined()
  })
})

describe("a number out of its range, or no number, is answered with the range", () => {
  test.each([
    ["bow.riser.massG", 0, "0 given; a number in 1 … 10000 g is needed"],
    ["bow.riser.massG", 10_000.5, "10000.5 given; a number in 1 … 10000 g is needed"],
    ["bow.riser.massG", "1200", '"1200" given; a number in 1 … 10000 g is needed'],
    ["bow.riser.massG", null, "null given; a number in 1 … 10000 g is needed"],
    ["bow.riser.massG", [3, 5], "a list of 2 given; a number in 1 … 10000 g is needed"],
    ["bow.drawWeightLbf", 151, "151 given; a number in 1 … 150 lbf is needed"],
    ["bow.letOffPercent", 100, "100 given; a number in 0 … 99 % is needed"],
    ["pose", { draw: 1.5 }, "1.5 given; a number in 0 … 1 is needed"],
    ["pose", { slopeDeg: -90.5 }, "-90.5 given; a number in -90 … 90 ° is needed"],
    ["target", { netLiftNm: [-200, 3] }, "-200 given; a number in -100 … 100 N·m is needed"],
    ["archer", { elbowElevationDeg: 46 }, "46 given; a number in -45 … 45 ° is needed"],
  ])("%s: %j", (path, value, message) => {
    const [error] = errors(changed(path, value))
    expect(error).toMatchObject({ code: "not-allowed", message })
    expect(error?.path.startsWith(path)).toBe(true)
  })

  test("a list says which entry", () => {
    expect(lines(changed("bow.riser.centreMm", [3, "5", 9000]))).toEqual([
      'bow.riser.centreMm[1]: "5" given; a number in -2000 … 2000 mm is needed',
      "bow.riser.centreMm[2]: 9000 given; a number in -2000 … 2000 mm is needed",
    ])
  })

  test("a number beyond float64 is infinite, and refused", () => {
    const text = JSON.stringify(smallestDocument()).replace('"massG":1700', '"massG":1e999')
    expect(lines(text)).toEqual(["bow.riser.massG: Infinity given; a number in 1 … 10000 g is needed"])
  })

  test("discs come in whole numbers", () => {
    expect(lines(rigged({ front: [discs({ count: 2.5 })] }))).toEqual([
      "rig[0].chain[0].count: 2.5 given; a whole number in 0 … 60 is needed",
    ])
  })

  test("a place deep on an arm is named in full", () => {
    const document = rigged({ back: [discs()], front: [vbar({ right: arm(40, 7, [discs(), rod({ massG: -3 })]) })] })
    expect(lines(document)).toEqual([
      "rig[1].chain[0].right.chain[1].massG: -3 given; a number in 0 … 2000 g is needed",
    ])
  })
})

describe("a shape that is not the format's is answered with the shape", () => {
  test.each([
    ["bow.riser", "x", 'bow.riser: "x" given; an object is needed'],
    ["bow.riser.centreMm", "3,5,7", 'bow.riser.centreMm: "3,5,7" given; a list of numbers is needed'],
    ["bow.riser.centreMm", [3, 5], "bow.riser.centreMm: too short; at least 3 entries"],
    ["bow.riser.centreMm", [3, 5, 7, 2], "bow.riser.centreMm: too long; at most 3 entries"],
    ["bow.hand", "both", 'bow.hand: "both" given; one of right, left is needed'],
    ["bow.kind", "long", 'bow.kind: "kind" is "long"; one of recurve, compound is needed'],
    ["bow.kind", undefined, 'bow.kind: "kind" is missing; one of recurve, compound is needed'],
    ["name", 5, "name: 5 given; text in quotes is needed"],
    ["name", "x".repeat(201), "name: too long; at most 200 characters"],
    ["rig", "none", 'rig: "none" given; a list is needed'],
    ["bow", { ...recurveBow(), stringWrap: "yes" }, 'bow.stringWrap: "yes" given; true or false is needed'],
  ])("%s: %j", (path, value, line) => {
    expect(lines(changed(path, value))).toEqual([line])
  })

  test("a part that is none is answered with the parts there are", () => {
    expect(lines(rigged({ front: [{ part: "stick" }] }))).toEqual([
      'rig[0].chain[0].part: "part" is "stick"; one of extender, rod, damper, weights, swing, vbar is needed',
    ])
  })

  test("an arm carries no second V-bar", () => {
    expect(lines(rigged({ front: [vbar({ left: arm(30, 5, [vbar()]) })] }))).toEqual([
      'rig[0].chain[0].left.chain[0].part: "part" is "vbar"; one of extender, rod, damper, weights, swing is needed',
    ])
  })

  test("a list too long is refused before anything is computed from it", () => {
    const many = Array.from({ length: 61 }, () => ({ name: "a", massG: 2, centreMm: [3, 5, 7] }))
    expect(lines(changed("accessories", many))).toEqual(["accessories: too long; at most 60 entries"])
  })

  test("text of any length is quoted shortly", () => {
    const [line] = lines(changed("bow.riser.massG", "x".repeat(5000)))
    expect(line!.length).toBeLessThan(160)
  })
})

describe("what is missing is named", () => {
  test("a number, with its range", () => {
    expect(errors(changed("bow.riser.massG"))).toEqual([
      { code: "missing", path: "bow.riser.massG", message: "is missing; a number in 1 … 10000 g is needed" },
    ])
  })

  test.each([
    "name",
    "bow",
    "bow.riser",
    "bow.limbs",
    "bow.string",
    "bow.arrow",
    "bow.riser.centreMm",
    "bow.braceHeightMm",
  ])("%s", (path) => {
    expect(errors(changed(path)).map((error) => error.path)).toEqual([path])
  })

  test("everything an element lacks, all at once", () => {
    expect(errors(rigged({ front: [{ part: "rod" }] })).map((error) => error.path)).toEqual(
      ["massG", "lengthMm", "outerMm"].map((key) => `rig[0].chain[0].${key}`),
    )
  })
})

describe("rules between fields", () => {
  test.each([
    [
      "the draw is longer than the brace height",
      changed("bow.drawLengthMm", 190),
      "bow.drawLengthMm: 190 given; more than the brace height, 190 mm, is needed",
    ],
    [
      "a riser's radii of gyration are those of some body",
      changed("bow.riser.gyrationMm", [30, 40, 51]),
      "bow.riser.gyrationMm: no body has these radii of gyration: none squared may exceed the other two squared together",
    ],
    [
      "so are a compound limb's",
      changed("bow.limbs.gyrationMm", [51, 30, 40]),
      "bow.limbs.gyrationMm: no body has these radii of gyration: none squared may exceed the other two squared together",
    ],
    [
      "a tube is hollow at most up to its skin",
      rigged({ front: [rod({ innerMm: 18 })] }),
      "rig[0].chain[0].innerMm: 18 given; less than the outer diameter, 18 mm, is needed",
    ],
    [
      "also on an arm",
      rigged({ front: [vbar({ left: arm(30, 5, [rod({ innerMm: 19 })]) })] }),
      "rig[0].chain[0].left.chain[0].innerMm: 19 given; less than the outer diameter, 18 mm, is needed",
    ],
    [
      "a chain hangs on a mount that the bow has",
      changed("rig", [{ mount: "back", chain: [] }]),
      'rig[0].mount: "back" given, but the bow has no such mount; add mounts.back',
    ],
    [
      "a mount carries one chain",
      changed(
        "rig",
        [
          { mount: "front", chain: [] },
          { mount: "front", chain: [] },
        ],
        rigged({}),
      ),
      'rig[1].mount: "front" carries a chain already; one chain a mount',
    ],
    [
      "a target's smaller number comes first",
      changed("target", { upMm: [7, 3] }),
      "target.upMm: 7 to 3 given; the smaller number comes first",
    ],
  ])("%s", (_, document, line) => {
    expect(lines(document)).toEqual([line])
    expect(codes(document)).toEqual(["contradiction"])
  })

  test("radii that meet the rule exactly are those of a flat plate, and allowed", () => {
    expect(lines(changed("bow.riser.gyrationMm", [30, 40, 50]))).toEqual([])
  })

  test("all broken rules are named together", () => {
    const document = changed("bow.drawLengthMm", 150, rigged({ front: [rod({ innerMm: 20 })] }))
    expect(errors(document).map((error) => error.path)).toEqual(["bow.drawLengthMm", "rig[0].chain[0].innerMm"])
  })
})

describe("what is no scene file at all", () => {
  test.each([
    ["", "the file is empty"],
    [" \n\t", "the file is empty"],
    ["null", "null given; a scene is one JSON object"],
    ["[2, 3]", "a list of 2 given; a scene is one JSON object"],
    ['"x"', '"x" given; a scene is one JSON object'],
    ["{}", 'format: nothing given; a scene file says "bow-balance-bench"'],
    ['{"format": "other"}', 'format: "other" given; a scene file says "bow-balance-bench"'],
  ])("%j", (text, line) => {
    expect(lines(text)).toEqual([line])
  })

  test("broken JSON is answered with line and column", () => {
    const broken = '{\n "format": "bow-balance-bench"\n "version": 1\n}'
    expect(codes(broken)).toEqual(["syntax"])
    expect(lines(broken)[0]).toMatch(/^not JSON: line 3, column 2: /)
  })

  test.each([
    ["a newer one", 2, "newer-version", /newer bench: update this one$/],
    ["none", undefined, "not-allowed", /^nothing given; a whole number/],
    ["a text", "1", "not-allowed", /^"1" given; a whole number/],
    ["a fraction", 1.5, "not-allowed", /^1.5 given; a whole number/],
    ["nought", 0, "not-allowed", /^0 given; a whole number/],
  ])("a version that is %s", (_, version, code, message) => {
    expect(errors(changed("version", version))).toEqual([
      { code, path: "version", message: expect.stringMatching(message) },
    ])
  })
})
