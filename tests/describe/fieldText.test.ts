import { describe, expect, test } from "vitest"
import { allowedText, fieldText, readField, stepped } from "../../src/describe/fieldText"
import { bowFields, elementFields, placeMm, poseFields } from "../../src/scene/fields"
import { defaultPreferences } from "../../src/state/preferences"

const metric = defaultPreferences
const imperial = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" } as const
const plain = (text: string) => text.replaceAll("\u00a0", " ")
const length = elementFields.rod.lengthMm
const { count } = elementFields.weights

describe("the text of a field", () => {
  test("is in the chosen unit, without needless zeros", () => {
    expect(fieldText(700, "length", metric)).toBe("700")
    expect(fieldText(703.25, "length", metric)).toBe("703.25")
    expect(fieldText(-0, "length", metric)).toBe("0")
    expect(fieldText(63.5, "length", imperial)).toBe("2.5")
    expect(fieldText(0.37, "fraction", metric)).toBe("37")
  })

  test("reads back as the same value to a thousandth of what can be shown", () => {
    for (const units of [metric, imperial]) {
      const back = readField(fieldText(703.2, "length", units), length, units)
      expect(back.ok && Math.abs(back.value - 703.2)).toBeLessThan(0.003)
    }
  })
})

describe("what is typed", () => {
  test("may have a decimal comma, spaces, a true minus or the unit after it", () => {
    expect(readField(" 62,5 ", length, metric)).toEqual({ ok: true, value: 62.5 })
    expect(readField("62.5 mm", length, metric)).toEqual({ ok: true, value: 62.5 })
    expect(readField("2.5 IN", length, imperial)).toEqual({ ok: true, value: 63.5 })
    expect(readField("\u221235", placeMm, metric)).toEqual({ ok: true, value: -35 })
    expect(readField("37 %", poseFields.draw, metric)).toEqual({ ok: true, value: 0.37 })
  })

  test("is refused with the range in the shown unit", () => {
    const refused = (text: string, units: typeof imperial | typeof metric = metric) => {
      const reading = readField(text, length, units)
      return reading.ok ? null : plain(reading.problem)
    }
    expect(refused("abc")).toBe('"abc" given; a number from 1 to 2000 mm is needed')
    expect(refused("")).toBe("nothing given; a number from 1 to 2000 mm is needed")
    expect(refused("2001")).toBe('"2001" given; a number from 1 to 2000 mm is needed')
    expect(refused("90", imperial)).toBe('"90" given; a number from 0.0394 to 78.7402 in is needed')
    expect(refused("1e999")).not.toBeNull()
  })

  test("must be whole where the field counts things", () => {
    expect(readField("3", count, metric)).toEqual({ ok: true, value: 3 })
    expect(readField("3.5", count, metric).ok).toBe(false)
    expect(plain(allowedText(count, metric))).toBe("a whole number from 0 to 60")
  })

  test("takes a limit as it is shown in inches", () => {
    expect(readField("78.7402", length, imperial)).toEqual({ ok: true, value: 2000 })
    expect(readField("0.0394", length, imperial).ok).toBe(true)
    expect(readField("78.7403", length, imperial).ok).toBe(false)
    expect(readField("2000.001", length, metric).ok).toBe(false)
  })
})

describe("an arrow key", () => {
  test("steps by the field's own step in the file's unit, ten times as far with Shift", () => {
    expect(stepped(703, length, metric, 1, false)).toBe(708)
    expect(stepped(703, length, metric, -1, true)).toBe(653)
    expect(stepped(0.3, poseFields.draw, metric, 1, false)).toBe(0.31)
    expect(stepped(40, bowFields.drawWeightLbf, metric, 1, false)).toBe(40.5)
  })

  test("steps by round numbers of the shown unit", () => {
    expect(stepped(25.4, placeMm, imperial, 1, false)).toBeCloseTo(25.4 * 1.05, 9)
    expect(stepped(28.349523125 * 3, elementFields.rod.massG, imperial, 1, false)).toBeCloseTo(28.349523125 * 3.05, 7)
  })

  test("stops at the ends of the range", () => {
    expect(stepped(1999, length, metric, 1, true)).toBe(2000)
    expect(stepped(0, count, metric, -1, false)).toBe(0)
  })
})
