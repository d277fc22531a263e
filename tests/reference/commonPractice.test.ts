/**
 * What every coach expects of a rig: signs and usual sizes. All of it is common practice, no source. It is tried on
 * the shipped target recurve, through the same report that a coach reads.
 */
import { readFileSync, readdirSync } from "node:fs"
import { join } from "node:path"
import { describe, expect, test } from "vitest"
import { readScene } from "../../src/scene/parse"
import { type Report, reportOf } from "../../src/scene/sweeps"
import { discs, type Document, extender, swing } from "../scene/documents"

const folder = join(import.meta.dirname, "../../scenes")
const load = (name: string): Document => JSON.parse(readFileSync(join(folder, name), "utf8"))
const names = readdirSync(folder).filter((name) => name.endsWith(".json"))

function report(document: unknown): Report {
  const scene = readScene(document)
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  const made = reportOf(scene.value)
  if (!made.ok) throw new Error(JSON.stringify(made.errors))
  return made.value.report
}

interface Part {
  [key: string]: unknown
  part: string
  chain?: Part[]
}
interface Arm {
  splayDeg: number
  droopDeg: number
}
type Chain = Part[]

const target = load("target-recurve-straight-bar.json")
/** The target recurve with its front chain changed in place. */
function changed(change: (front: Chain, document: Document) => void): Document {
  const document = structuredClone(target)
  const rig = document.rig as { mount: string; chain: Chain }[]
  change(rig.find((entry) => entry.mount === "front")!.chain, document)
  return document
}
const find = (chain: Chain, part: string): Part => chain.find((element) => element.part === part)!
const arms = (chain: Chain): Arm[] => {
  const { left, right } = find(chain, "vbar") as unknown as { left: Arm; right: Arm }
  return [left, right]
}
const PITCH = 2
const ROLL = 0
const turn = (of: Report, axis: number) => of.inertiaGrip[axis]![axis]!
const before = report(target)

describe("usual places and sizes", () => {
  test.each(names.filter((name) => name.startsWith("target-recurve")))(
    "%s balances well within 25 to 100 mm ahead of the grip at brace, and at the grip or ahead of it at full draw",
    (name) => {
      const { centreMm, fullDraw } = report(load(name))
      const inside = 5
      expect(centreMm[0]).toBeGreaterThan(25 + inside)
      expect(centreMm[0]).toBeLessThan(100 - inside)
      expect(fullDraw.centreMm[0]).toBeGreaterThan(0)
    },
  )

  test.each(names.filter((name) => name.startsWith("target-recurve")))(
    "%s has a front rod of 28 to 30 in, side rods of 8 to 12 in and an extender of up to 8 in",
    (name) => {
      const rig = load(name).rig as { mount: string; chain: Chain }[]
      const front = rig.find((entry) => entry.mount === "front")!.chain
      const inches = (part: Part) => Number(part.lengthMm) / 25.4
      expect(inches(find(front, "rod"))).toBeGreaterThanOrEqual(28)
      expect(inches(find(front, "rod"))).toBeLessThanOrEqual(30)
      expect(inches(find(front, "extender"))).toBeLessThanOrEqual(8)
      for (const arm of arms(front)) {
        const rod = find((arm as unknown as { chain: Chain }).chain, "rod")
        expect(inches(rod)).toBeGreaterThanOrEqual(8)
        expect(inches(rod)).toBeLessThanOrEqual(12)
      }
    },
  )

  test("the short rod for woods and fields is at most 12 in", () => {
    const rig = load("short-hunting-rod.json").rig as { chain: Chain }[]
    expect(Number(find(rig[0]!.chain, "rod").lengthMm)).toBeLessThanOrEqual(12 * 25.4)
  })
})

describe("the front rod", () => {
  test("longer, with the same weight, brings the balance forward", () => {
    const longer = report(changed((front) => Object.assign(find(front, "rod"), { lengthMm: 762 })))
    expect(longer.massG).toBeCloseTo(before.massG, 9)
    expect(longer.centreMm[0]).toBeGreaterThan(before.centreMm[0] + 1)
    expect(turn(longer, PITCH)).toBeGreaterThan(turn(before, PITCH))
  })

  test("shorter, needs more end weight for the same balance", () => {
    const shorter = (eachG: number) =>
      report(
        changed((front) => {
          Object.assign(find(front, "rod"), { lengthMm: 600 })
          Object.assign(find(front, "weights"), { eachG })
        }),
      )
    const rig = target.rig as { mount: string; chain: Chain }[]
    const each = Number(find(rig.find((entry) => entry.mount === "front")!.chain, "weights").eachG)
    expect(shorter(each).centreMm[0]).toBeLessThan(before.centreMm[0])
    expect(shorter(each * 2).centreMm[0]).toBeGreaterThan(before.centreMm[0])
  })
})

describe("side rods that point back", () => {
  test("drooped, move the balance down and a little forward", () => {
    const drooped = report(
      changed((front) => {
        for (const arm of arms(front)) arm.droopDeg += 25
      }),
    )
    const [down, forward] = [before.centreMm[1] - drooped.centreMm[1], drooped.centreMm[0] - before.centreMm[0]]
    expect(forward).toBeGreaterThan(0)
    expect(down).toBeGreaterThan(2 * forward)
  })

  test("spread, move it forward and raise the roll resistance; narrow, the bow is easier to cant", () => {
    const spread = (by: number) =>
      report(
        changed((front) => {
          for (const arm of arms(front)) arm.splayDeg += by
        }),
      )
    expect(spread(15).centreMm[0]).toBeGreaterThan(before.centreMm[0])
    expect(turn(spread(15), ROLL)).toBeGreaterThan(turn(before, ROLL))
    expect(turn(spread(-15), ROLL)).toBeLessThan(turn(before, ROLL))
  })
})

test("weight on top raises the balance, and as much moment below brings it back down", () => {
  const mounts = { ...(target.mounts as object), upper: { atMm: [40, 200, 0] }, lower: { atMm: [40, -200, 0] } }
  const with100 = (at: string[]) => {
    const rig = [...(target.rig as unknown[])]
    for (const mount of at) rig.push({ mount, chain: [discs({ count: 1, eachG: 100 })] })
    return report({ ...target, mounts, rig })
  }
  expect(with100(["upper"]).centreMm[1]).toBeGreaterThan(before.centreMm[1] + 5)
  const both = with100(["upper", "lower"])
  expect(both.centreMm[1] * both.massG).toBeCloseTo(before.centreMm[1] * before.massG, 6)
})

test("an extender in front, answered by weight at the back, gives the place back and raises the turn resistance", () => {
  const longer = changed((front) => front.unshift(extender({ massG: 40, lengthMm: 127 }) as Part))
  const mounts = { ...(longer.mounts as object), back: { atMm: [-15, -80, 0], yawDeg: 180 } }
  const answered = (eachG: number) =>
    report({
      ...longer,
      mounts,
      rig: [
        ...(longer.rig as unknown[]),
        { mount: "back", chain: [extender({ lengthMm: 250 }), discs({ count: 1, eachG })] },
      ],
    })
  expect(report(longer).centreMm[0]).toBeGreaterThan(before.centreMm[0])
  // The balance point moves back steadily with the weight: halve the range until it is where it was.
  let [light, heavy] = [0, 1000]
  for (let step = 0; step < 40; step++) {
    const middle = (light + heavy) / 2
    if (answered(middle).centreMm[0] > before.centreMm[0]) light = middle
    else heavy = middle
  }
  expect(light).toBeGreaterThan(10)
  expect(heavy).toBeLessThan(999)
  expect(answered(light).centreMm[0]).toBeCloseTo(before.centreMm[0], 6)
  expect(turn(answered(light), PITCH)).toBeGreaterThan(turn(before, PITCH))
})

test("drawing moves the balance back by millimetres, and the line of pull lifts far more than that takes away", () => {
  for (const name of names.filter((each) => each.includes("recurve"))) {
    const { centreMm, fullDraw } = report(load(name))
    const back = centreMm[0] - fullDraw.centreMm[0]
    expect(back).toBeGreaterThan(1)
    expect(back).toBeLessThan(15)
    const lost = back * 1e-3 * fullDraw.massG * 1e-3 * 9.80665
    expect(fullDraw.liftNm).toBeGreaterThan(5 * lost)
  }
})

describe("on slopes, a balance point below the grip", () => {
  const noseDown = (of: Report, slopeDeg: number) => of.slopes.find((row) => row.slopeDeg === slopeDeg)!.noseDownNm
  const lean = (of: Report) => noseDown(of, 30) - noseDown(of, -30)
  const low = { mount: "lower", chain: [extender({ lengthMm: 100 }), discs({ count: 1, eachG: 170 })] as Chain }
  const mounts = { ...(target.mounts as object), lower: { atMm: [0, -250, 0], pitchDeg: -90 } }
  const fixed = report({ ...target, mounts, rig: [...(target.rig as unknown[]), low] })

  test("makes the bow heavier in front when aimed up than when aimed down", () => {
    expect(lean(fixed)).toBeGreaterThan(0.1)
  })

  test("matters less where the same mass hangs free", () => {
    const hanging = { mount: "lower", chain: [swing({ stemLengthMm: 100 })] as Chain }
    const hung = report({ ...target, mounts, rig: [...(target.rig as unknown[]), hanging] })
    expect(lean(hung)).toBeLessThan(lean(fixed))
    expect(lean(hung)).toBeGreaterThan(0)
  })
})
