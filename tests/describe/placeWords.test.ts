import { describe, expect, it } from "vitest"
import { aboveWords, aheadWords, short, sideWords } from "../../src/describe/placeWords"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const inches = { ...metric, lengthUnit: "in" } as const

describe("a place in words", () => {
  it("is whole millimetres or hundredths of an inch, with the side it is on", () => {
    expect(aheadWords(61.7, metric)).toBe("62\u00a0mm ahead")
    expect(aheadWords(-12.2, metric)).toBe("12\u00a0mm behind")
    expect(aheadWords(61.7, inches)).toBe("2.43\u00a0in ahead")
    expect(aboveWords(-85.3, metric)).toBe("85\u00a0mm below")
    expect(aboveWords(7.1, metric)).toBe("7\u00a0mm above")
    expect(sideWords(3.2, metric)).toBe("3\u00a0mm right")
    expect(sideWords(-2.1, metric)).toBe("2\u00a0mm left")
  })

  it("has no side where the number would be shown as zero", () => {
    expect(aheadWords(-0.4, metric)).toBe("at the grip")
    expect(aboveWords(0.4, metric)).toBe("level with the grip")
    expect(sideWords(0, metric)).toBe("in the middle")
    expect(aheadWords(0.4, inches)).toBe("0.02\u00a0in ahead")
  })

  it("is a dash for what is no number", () => {
    expect(short(Number.NaN, "length", metric)).toBe("–")
  })
})
