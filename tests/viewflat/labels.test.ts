import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { around, labelBox, overlap, placeLabels } from "../../src/viewflat/labels"
import { placeMomentArm } from "../../src/viewflat/momentArm"
import { ticks } from "../../src/viewflat/ruler"

const room = { left: 0, top: 0, right: 800, bottom: 600 }

describe("labels", () => {
  it("never overlap each other or what is taken, and stay in their room", () => {
    const at = fc.record({ x: fc.integer({ min: 0, max: 800 }), y: fc.integer({ min: 0, max: 600 }) })
    const wish = fc.record({ at, text: fc.string({ minLength: 1, maxLength: 30 }) })
    fc.assert(
      fc.property(fc.array(wish, { maxLength: 25 }), fc.array(at, { maxLength: 8 }), (wishes, knobs) => {
        const taken = knobs.map((knob) => around(knob, 40, 40))
        const placed = placeLabels(
          wishes.map((one, index) => ({ ...one, id: String(index) })),
          taken,
          room,
        )
        const boxes = placed.map(labelBox)
        boxes.forEach((box, index) => {
          expect(box.left >= 0 && box.right <= 800 && box.top >= 0 && box.bottom <= 600).toBe(true)
          for (const other of [...taken, ...boxes.slice(index + 1)]) expect(overlap(box, other)).toBe(false)
        })
      }),
      { seed: 13, numRuns: 200 },
    )
  })

  it("let the earlier wish choose first, and leave out what has no room", () => {
    const small = { left: 0, top: 0, right: 120, bottom: 60 }
    const wishes = ["first", "second", "third", "fourth"].map((id) => ({ id, text: id, at: { x: 60, y: 30 } }))
    const placed = placeLabels(wishes, [], small)
    expect(placed[0]).toMatchObject({ id: "first", x: 60, y: 8 })
    expect(placed.length).toBeLessThan(4)
  })
})

describe("the moment arm's dimension", () => {
  const balance = { x: 350, y: 210 }
  const grip = { x: 300, y: 200 }

  it("runs under both grip and balance point, its number beside the plumb line", () => {
    const place = placeMomentArm(balance, grip, "62 mm ahead", [])
    expect([place.left, place.right]).toEqual([300, 350])
    expect(place.level).toBeGreaterThan(210)
    expect(place.text.x).toBeGreaterThan(350)
  })

  it("goes where no knob hides it", () => {
    const knob = around({ x: 380, y: 264 }, 40, 40)
    const place = placeMomentArm(balance, grip, "62 mm ahead", [knob])
    expect(overlap(place.boxes[0], knob)).toBe(false)
    const wall = { left: 358, right: 900, top: 0, bottom: 600 }
    expect(placeMomentArm(balance, grip, "62 mm ahead", [wall]).text.x).toBeLessThan(300)
  })
})

describe("the marks on the ground", () => {
  const metric = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" } as const

  it("are round distances from the grip, far enough apart, the last one with its unit", () => {
    const marks = ticks(-0.23, 0.71, 400, 64, metric)
    expect(marks.map(({ text }) => text)).toEqual(["\u2212200", "0", "200", "400", "600\u00a0mm"])
    marks.forEach(({ at }, index) => {
      expect(at).toBeCloseTo(-0.2 + 0.2 * index, 12)
    })
  })

  it("are round inches where lengths are in inches", () => {
    const marks = ticks(-0.23, 0.71, 400, 64, { ...metric, lengthUnit: "in" })
    expect(marks.map(({ text }) => text)).toEqual(["\u22128", "0", "8", "16", "24\u00a0in"])
    expect(marks[2]!.at).toBeCloseTo(0.2032, 12)
  })

  it("are none where the line is shorter than their distance", () => {
    expect(ticks(0.01, 0.09, 400, 64, metric)).toEqual([])
  })
})
