import { describe, expect, it } from "vitest"
import { pictureText } from "../../src/describe/pictureText"
import { evaluate } from "../../src/scene/evaluate"
import { readScene } from "../../src/scene/parse"
import {
  arm,
  type Document,
  discs,
  extender,
  fullDocument,
  rigged,
  rod,
  smallestDocument,
  vbar,
} from "../scene/documents"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const

function textOf(document: Document, units: Parameters<typeof pictureText>[2] = metric): string {
  const scene = readScene(document)
  if (!scene.ok) throw new Error("not a scene")
  const evaluation = evaluate(scene.value)
  if (!evaluation.ok) throw new Error("no evaluation")
  return pictureText(scene.value, evaluation.value, units).replaceAll("\u00a0", " ")
}

describe("the picture in words", () => {
  it("names bow, pose, each chain from its mount outward and the balance point against its target", () => {
    const text = textOf(
      rigged(
        {
          front: [
            extender(),
            vbar({ left: arm(35, 12, [rod({ lengthMm: 253 }), discs({ count: 1 })]) }),
            rod(),
            discs(),
          ],
        },
        { target: { forwardMm: [300, 310] }, pose: { draw: 0, slopeDeg: 15, cantDeg: 0 } },
      ),
    )
    expect(text).toMatch(/^A right-handed compound bow, at brace, 15° up, upright\. /)
    expect(text).toContain("Front: extender 105 mm, V-bar, rod 710 mm, 5 discs, 140 g.")
    expect(text).toContain("Left arm: splay 35°, droop 12°, rod 253 mm, 1 disc, 28 g.")
    expect(text).toMatch(
      /Balance point \d+ mm ahead, \d+ mm (above|below), \d+ mm left; target 300–310 mm: .* too far back\.$/,
    )
  })

  it("tells second parts of a kind and swing weights apart", () => {
    const text = textOf(fullDocument())
    expect(text).toContain("swing weight of 151 g on 170 mm")
    expect(text).toContain("Right arm: splay 41°, droop 9°, rod 251 mm, damper 31 mm, 3 discs, 84 g.")
    expect(textOf(rigged({ front: [rod(), rod({ lengthMm: 97 })] }))).toContain("Front: rod 710 mm, rod 2 97 mm.")
  })

  it("says of a measured bow whose place forward no reading determines that it holds only as assumed", () => {
    const scene = readScene({ ...rigged({ front: [rod()] }), target: { forwardMm: [0, 500] } })
    if (!scene.ok) throw new Error("not a scene")
    const evaluation = evaluate(scene.value)
    if (!evaluation.ok) throw new Error("no evaluation")
    const text = (spread?: number) => pictureText(scene.value, evaluation.value, metric, spread)
    expect(text(Number.POSITIVE_INFINITY)).toMatch(/target, if the riser is as assumed\.$/)
    expect(text(7)).toBe(text())
  })

  it("is short for a bare bow without a target", () => {
    expect(textOf(smallestDocument())).toMatch(
      /^A right-handed compound bow, at brace, level, upright\. Balance point [^;]*\.$/,
    )
  })

  it("uses the chosen units", () => {
    const inches = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const
    expect(textOf(rigged({ front: [rod({ lengthMm: 711.2 }), discs()] }), inches)).toContain(
      "Front: rod 28 in, 5 discs, 4.94 oz.",
    )
  })
})
