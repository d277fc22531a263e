import { describe, expect, it } from "vitest"
import { bowFields, elementFields, armFields } from "../../src/scene/fields"
import { snap } from "../../src/picture/handle"
import { changeText, tipText, valueAndEffect, valueText } from "../../src/picture/handleText"

const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const
const inches = { ...metric, lengthUnit: "in" } as const
const length = elementFields.rod.lengthMm

describe("a handle's words", () => {
  it("give the value with its unit and no idle zeros", () => {
    expect(valueText({ field: length, value: 720 }, metric)).toBe("720\u00a0mm")
    expect(valueText({ field: length, value: 711.2 }, inches)).toBe("28\u00a0in")
    expect(valueText({ field: armFields.droopDeg, value: -12 }, metric)).toBe("\u221212°")
    expect(valueText({ field: elementFields.weights.count, value: 5 }, metric)).toBe("5 discs")
    expect(valueText({ field: elementFields.weights.count, value: 1 }, metric)).toBe("1 disc")
  })

  it("say what the value does to the balance point", () => {
    const handle = { field: length, value: 720, label: "Front rod length" }
    expect(valueAndEffect(handle, 63.6, metric)).toBe("720\u00a0mm; balance point 64\u00a0mm ahead")
    expect(valueAndEffect(handle, -2.3, metric)).toBe("720\u00a0mm; balance point 2\u00a0mm behind")
    expect(valueAndEffect(handle, -0.3, metric)).toBe("720\u00a0mm; balance point at the grip")
    expect(changeText(handle, 63.6, inches)).toBe("Front rod length 28.35\u00a0in. Balance point 2.5\u00a0in ahead.")
  })

  it("say that both arms move only where they do", () => {
    const paired = { field: armFields.splayDeg, value: 35, twin: "front/vbar/right:splayDeg" }
    expect(tipText(paired, true, metric)).toBe("35°, both arms")
    expect(tipText(paired, false, metric)).toBe("35°")
    expect(tipText({ ...paired, twin: null }, true, metric)).toBe("35°")
  })
})

describe("snapping", () => {
  it("takes the nearest step", () => {
    expect(snap({ field: length }, 712.6, metric)).toBe(715)
    expect(snap({ field: length }, 712.4, metric)).toBe(710)
    expect(snap({ field: elementFields.weights.count }, 4.6, metric)).toBe(5)
    expect(snap({ field: armFields.splayDeg }, -7.4, metric)).toBe(-7)
    expect(Object.is(snap({ field: armFields.splayDeg }, -0.4, metric), 0)).toBe(true)
  })

  it("stays inside the range", () => {
    expect(snap({ field: length }, -30, metric)).toBe(1)
    expect(snap({ field: length }, 2503, metric)).toBe(2000)
  })

  it("leaves no binary dust on small steps", () => {
    expect(snap({ field: bowFields.arrowMassG }, 20.26, metric)).toBe(20.5)
    expect(snap({ field: { ...length, min: 0, step: 0.1 } }, 0.31, metric)).toBe(0.3)
  })

  it("steps in round inches where lengths are shown in inches", () => {
    const value = snap({ field: length }, 712, inches)
    expect(value / 25.4).toBeCloseTo(28, 9)
    expect(snap({ field: length }, 716, inches) / 25.4).toBeCloseTo(28.2, 9)
  })
})
