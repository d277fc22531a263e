/** Where the parts of a scene are and what they weigh, worked out by hand from the file. */
import { describe, expect, test } from "vitest"
import { compose, type Vec3 } from "../../src/core/solids"
import { bareParts, nockPoint, type Part, rig, stringLine } from "../../src/scene/assemble"
import { stringSolids } from "../../src/scene/assemble/bowParts"
import { placeLimbs } from "../../src/scene/limbPlace"
import { expectNear } from "../core/near"
import {
  arm,
  damper,
  discs,
  type Document,
  extender,
  fullDocument,
  rigged,
  rod,
  smallestDocument,
  swing,
  vbar,
} from "./documents"
import { sceneOf } from "./scenes"

const DOWN: Vec3 = [0, -1, 0]
const parts = (document: Document, draw = 0): Part[] => {
  const scene = sceneOf(document)
  const limbs = placeLimbs(scene.bow, draw)
  if (!limbs.ok) throw new Error("no limbs")
  return [...bareParts(scene, limbs.value), ...rig(scene, DOWN)]
}
const part = (list: readonly Part[], path: string): Part => {
  const found = list.find((each) => each.path === path)
  if (found === undefined) throw new Error(`no ${path} among ${list.map((each) => each.path).join(" ")}`)
  return found
}
const grams = (each: Part) => compose(each.solids).mass * 1e3
const centreMm = (each: Part) => compose(each.solids).centre.map((metres) => metres * 1e3)
const MM = 1e-11

describe("paths", () => {
  test("name bow, accessories and chains in the file's order; a second of a name gets #2 within its chain", () => {
    expect(parts(fullDocument()).map((each) => each.path)).toEqual([
      "bow/riser",
      "bow/limbs",
      "bow/string",
      "accessories/sight",
      "accessories/plunger",
      "accessories/sight#2",
      "front/extender",
      "front/vbar",
      "front/vbar/left/rod",
      "front/vbar/left/weights",
      "front/vbar/right/rod",
      "front/vbar/right/damper",
      "front/vbar/right/weights",
      "front/rod",
      "front/damper",
      "front/weights",
      "front/weights#2",
      "upper/weights",
      "lower/extender",
      "lower/weights",
      "back/extender",
      "back/swing",
    ])
  })

  test("of a second V-bar's arms carry its number", () => {
    const document = rigged({
      front: [vbar({ left: arm(30, 5, [rod()]) }), vbar({ left: arm(30, 5, [rod(), rod()]) })],
    })
    expect(rigPaths(document)).toEqual([
      "front/vbar",
      "front/vbar/left/rod",
      "front/vbar#2",
      "front/vbar#2/left/rod",
      "front/vbar#2/left/rod#2",
    ])
  })

  test("are unique, and addresses lead back to the part in the document", () => {
    const scene = sceneOf(fullDocument())
    const all = parts(fullDocument())
    expect(new Set(all.map((each) => each.path)).size).toBe(all.length)
    for (const { address, kind } of rig(scene, DOWN)) {
      const node = address.reduce<unknown>((here, step) => (here as Record<string, unknown>)[step], scene)
      expect((node as { part: string }).part).toBe(kind)
    }
  })

  const rigPaths = (document: Document) => rig(sceneOf(document), DOWN).map((each) => each.path)
})

describe("a chain", () => {
  test("lies end to end from its mount, straight forward by default", () => {
    const all = parts(rigged({ front: [extender(), rod(), damper(), discs()] }))
    const x = (path: string) => centreMm(part(all, path))
    // Extender 105, rod 710, damper 31, five discs of 6 mm, from [43, -71, 2].
    expectNear(x("front/extender"), [43 + 52.5, -71, 2], MM)
    expectNear(x("front/rod"), [43 + 105 + 355, -71, 2], MM)
    expectNear(x("front/damper"), [43 + 105 + 710 + 15.5, -71, 2], MM)
    expectNear(x("front/weights"), [43 + 105 + 710 + 31 + 15, -71, 2], MM)
  })

  test("follows its mount's pitch and yaw", () => {
    const turned = rigged(
      { back: [rod({ lengthMm: 100 })] },
      { mounts: { back: { atMm: [-20, 30, 5], pitchDeg: 30, yawDeg: 90 } } },
    )
    const { axis } = part(parts(turned), "back/rod")
    expectNear(axis!.direction, [0, 0.5, -Math.sqrt(3) / 2])
    expectNear(centreMm(part(parts(turned), "back/rod")), [-20, 30 + 25, 5 - 25 * Math.sqrt(3)], MM)
  })

  test("weighs what the file says: discs by count and each", () => {
    const all = parts(rigged({ front: [extender(), rod(), discs({ count: 7, eachG: 31 })] }))
    expectNear(
      ["front/extender", "front/rod", "front/weights"].map((path) => grams(part(all, path))),
      [61, 123, 217],
    )
  })

  test("of no discs keeps its place, weighs nothing and lengthens nothing", () => {
    const all = parts(rigged({ front: [rod(), discs({ count: 0 }), extender()] }))
    expect(grams(part(all, "front/weights"))).toBe(0)
    expectNear(part(all, "front/weights").solids[0]!.centre, [0.043 + 0.71, -0.071, 0.002])
    expectNear(centreMm(part(all, "front/extender")), [43 + 710 + 52.5, -71, 2], MM)
  })

  test("a tube's inertia knows its bore", () => {
    const across = (innerMm: number) => {
      const { aboutCentre } = part(parts(rigged({ front: [rod({ innerMm })] })), "front/rod").solids[0]!
      return [aboutCentre.xx, aboutCentre.zz]
    }
    const formula = (ri: number) => [
      (0.123 * (0.009 ** 2 + ri ** 2)) / 2,
      (0.123 * (3 * (0.009 ** 2 + ri ** 2) + 0.71 ** 2)) / 12,
    ]
    expectNear(across(15), formula(0.0075))
    expectNear(across(0), formula(0))
  })
})

describe("a V-bar", () => {
  const document = rigged({
    front: [vbar({ left: arm(30, 10, [rod({ lengthMm: 200 })]), right: arm(90, 0, [discs()]) }), rod()],
  })

  test("stands in its chain, and what follows starts at its end", () => {
    const all = parts(document)
    expectNear(centreMm(part(all, "front/vbar")), [43 + 16.5, -71, 2], MM)
    expectNear(centreMm(part(all, "front/rod")), [43 + 33 + 355, -71, 2], MM)
  })

  test("its arms start at its middle, the offset out along their own direction", () => {
    const all = parts(document)
    const reach = 21 + 100
    const [cos30, cos10, sin10] = [Math.sqrt(3) / 2, Math.cos(Math.PI / 18), Math.sin(Math.PI / 18)]
    expectNear(
      centreMm(part(all, "front/vbar/left/rod")),
      [59.5 - reach * cos10 * cos30, -71 - reach * sin10, 2 - reach * cos10 * 0.5],
      MM,
    )
    expectNear(centreMm(part(all, "front/vbar/right/weights")), [59.5, -71, 2 + 21 + 15], MM)
  })

  test("tells where its arms begin, even bare ones", () => {
    const { arms } = part(parts(rigged({ front: [vbar({ right: arm(90, 0, []) })] })), "front/vbar")
    expect(Object.keys(arms!)).toEqual(["right"])
    expectNear(arms!.right!.start, [0.0595, -0.071, 0.023])
  })
})

describe("a swing weight", () => {
  test("hangs from the chain's current end and does not lengthen it", () => {
    const all = parts(rigged({ front: [extender(), swing(), rod()] }))
    const hinge = 43 + 105
    expectNear(part(all, "front/swing").hung!.hinge, [hinge * 1e-3, -0.071, 0.002])
    expectNear(centreMm(part(all, "front/rod")), [hinge + 355, -71, 2], MM)
    const low = (19 * 85 + 151 * 170) / 170
    expectNear(centreMm(part(all, "front/swing")), [hinge, -71 - low, 2], MM)
    expectNear([grams(part(all, "front/swing"))], [170])
  })

  test("follows gravity on an arm as on a mount", () => {
    const scene = sceneOf(rigged({ front: [vbar({ left: arm(30, 10, [swing({ joint: "ball" })]) })] }))
    const gravity: Vec3 = [-0.36, -0.8, 0.48]
    const hung = rig(scene, gravity).find((each) => each.kind === "swing")!.hung!
    expect(hung.rest.direction).toEqual(gravity)
  })
})

describe("the bow", () => {
  test("both limbs of a compound are one part, mirrored in the centre line and shifted by the draw", () => {
    expectNear(centreMm(part(parts(smallestDocument()), "bow/limbs")), [-23, 17, 0], MM)
    const [upper, lower] = part(parts(smallestDocument(), 0.5), "bow/limbs").solids
    expectNear(upper!.centre, [-0.023 - 0.0155, 0.017 + 0.34 - 0.0095, 0])
    expectNear(lower!.centre, [-0.023 - 0.0155, 0.017 - 0.34 + 0.0095, 0])
    expectNear([upper!.mass, lower!.mass], [0.31, 0.31])
  })

  test("a string whose ends and nock are one place is its whole mass there, not a number that is none", () => {
    const { bow } = sceneOf(smallestDocument())
    for (const drawFraction of [0, 0.5]) {
      const place = placeLimbs(bow, drawFraction)
      if (!place.ok) throw new Error("no limbs")
      const end: Vec3 = [-place.value.draw, bow.nockHeightMm * 1e-3, 0]
      const { mass, centre, aboutCentre } = compose(stringSolids(bow, { ...place.value, stringEnds: [end, end] }))
      expectNear([mass, ...centre], [0.011, ...end])
      expectNear(Object.values(aboutCentre), [0, 0, 0, 0, 0, 0])
    }
  })

  test("the string at brace is one straight line at the brace height", () => {
    const string = part(parts(smallestDocument()), "bow/string")
    expect(string.solids).toHaveLength(1)
    expectNear(centreMm(string), [-190, 17, 0], MM)
    expectNear([grams(string)], [11])
    expectNear([string.solids[0]!.aboutCentre.zz], [(0.011 * 0.68 ** 2) / 12])
  })

  test("the drawn string goes through the nock, its mass shared by length", () => {
    const scene = sceneOf(smallestDocument())
    const limbs = placeLimbs(scene.bow, 1)
    if (!limbs.ok) throw new Error("no limbs")
    expectNear(nockPoint(scene.bow, limbs.value), [-0.69, 0.053, 0])
    const line = stringLine(scene.bow, limbs.value)
    expectNear(line.flat(), [-0.19, 0.017 + 0.321, 0, -0.69, 0.053, 0, -0.19, 0.017 - 0.321, 0])
    const [upper, lower] = part(parts(smallestDocument(), 1), "bow/string").solids
    const [long, short] = [Math.hypot(0.5, 0.053 - 0.017 + 0.321), Math.hypot(0.5, 0.017 + 0.321 - 0.053)]
    expectNear([upper!.mass, lower!.mass], [(0.011 * short) / (long + short), (0.011 * long) / (long + short)])
  })

  test("the arrow counts once the string is drawn at all, from the nock forward", () => {
    expect(parts(smallestDocument(), 0).some((each) => each.kind === "arrow")).toBe(false)
    expectNear(centreMm(part(parts(smallestDocument(), 1), "bow/arrow")), [-690 + 365, 53, 0], MM)
    expectNear([grams(part(parts(smallestDocument(), 0.01), "bow/arrow"))], [23])
  })

  test("an accessory with a size is a box, one without a point", () => {
    const all = parts(fullDocument())
    const { aboutCentre } = part(all, "accessories/sight").solids[0]!
    expectNear([aboutCentre.zz], [(0.21 * (0.15 ** 2 + 0.08 ** 2)) / 12])
    expect(part(all, "accessories/plunger").solids[0]!.aboutCentre.zz).toBe(0)
  })
})
