/** What the search lists is what building and weighing every setup lists. */
import fc from "fast-check"
import { describe, expect, test } from "vitest"
import { chosenAt, combinations, searchWhole } from "../../../src/core/find"
import { errorLine } from "../../../src/scene/errors"
import { evaluate } from "../../../src/scene/evaluate"
import { figuresOf } from "../../../src/scene/figures"
import {
  type FindQuestion,
  type FoundSetup,
  foundSetup,
  questionFor,
  setupSpace,
  spaceErrors,
} from "../../../src/scene/find"
import { reachOf } from "../../../src/scene/find/stays"
import { type Kit, readKit } from "../../../src/scene/kit"
import { validateScene } from "../../../src/scene/parse"
import type { RigEntry, Scene } from "../../../src/scene/schema"
import { discs, extender, rigged, rod, swing } from "../documents"
import { kitDocument } from "../kit/kits"

const needed = <T>(result: { ok: true; value: T } | { ok: false }) => {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}

const bow = needed(
  validateScene(
    rigged(
      { front: [rod(), discs()], lower: [extender({ lengthMm: 53 }), discs({ count: 2 })], back: [swing()] },
      {
        accessories: [{ name: "sight", massG: 210, centreMm: [130, 125, 29] }],
        pose: { draw: 0.3, slopeDeg: 17, cantDeg: -7 },
      },
    ),
  ),
)

function smallKit(): Kit {
  const document = kitDocument()
  document.vbars[0] = {
    ...document.vbars[0],
    ...{ splayDeg: { from: 35, to: 75, step: 40 }, droopDeg: { from: -5, to: 20, step: 25 } },
  }
  document.discs[0] = { ...document.discs[0], count: 3 }
  document.discs[1] = { ...document.discs[1], count: 1 }
  document.rods[0] = { ...document.rods[0], maxEndWeightG: 60 }
  return needed(readKit(document))
}

const question = (more: Partial<FindQuestion> = {}): FindQuestion => ({
  ...{
    mounts: ["front"],
    vbarMount: "front",
    arms: "alike",
    mostDiscs: 2,
    hold: "brace",
    always: { frontRod: false, vbar: false },
    target: {},
  },
  ...{ score: "nearest", variety: "each", count: 20 },
  ...more,
})

/** The figures of a rig through the bench's own evaluation, held level at brace or full draw. */
function weighed(scene: Scene, rig: readonly RigEntry[], hold: "brace" | "drawn") {
  const draw = hold === "drawn" ? 1 : 0
  const evaluation = needed(evaluate({ ...scene, rig: [...rig], pose: { draw, slopeDeg: 0, cantDeg: 0 } }))
  const { inertiaGrip, centreMm, fullDraw, massG } = figuresOf(evaluation)
  const reach = reachOf(evaluation.now.parts.filter(({ address }) => address[0] === "rig"))
  return {
    massG: massG - (draw === 1 ? scene.bow.arrow.massG : 0),
    ...{
      centreMm,
      netLiftNm: fullDraw.netLiftNm,
      pitch: inertiaGrip[2][2],
      yaw: inertiaGrip[1][1],
      roll: inertiaGrip[0][0],
    },
    ...{ reachForwardMm: reach[0]! * 1e3, reachSideMm: reach[1]! * 1e3 },
  }
}

type Weighed = ReturnType<typeof weighed>

const same = (found: FoundSetup, other: Weighed) => {
  for (const key of ["massG", "netLiftNm", "pitch", "yaw", "roll"] as const)
    expect(found[key]).toBeCloseTo(other[key], 9)
  for (const axis of [0, 1, 2] as const) expect(found.centreMm[axis]).toBeCloseTo(other.centreMm[axis], 9)
  for (const key of ["reachForwardMm", "reachSideMm"] as const) {
    if (found[key] === null) expect(other[key]).toBe(Number.NEGATIVE_INFINITY)
    else expect(found[key]).toBeCloseTo(other[key], 9)
  }
}

const listed = (space: ReturnType<typeof spaceOf>) =>
  searchWhole(space.problem).found.map((found) => foundSetup(space, found))
const spaceOf = (asked: FindQuestion, scene = bow, kit = smallKit()) => needed(setupSpace(scene, kit, asked))

test("every setup that is found weighs what the bench says it weighs, at brace and at full draw", () => {
  for (const hold of ["brace", "drawn"] as const) {
    for (const arms of ["alike", "free"] as const) {
      const asked = question({ hold, arms, mounts: ["lower", "front"], count: 40, target: { sideMm: [-30, 30] } })
      for (const score of ["nearest", "lightest", "steadiest", "steadyForMass"] as const) {
        const found = listed(spaceOf({ ...asked, score }))
        expect(found).toHaveLength(40)
        for (const each of found) same(each, weighed(bow, each.rig, hold))
      }
    }
  }
})

describe("against building every setup in turn", () => {
  const all = (() => {
    const space = spaceOf(question())
    const count = combinations(space.problem)
    return Array.from({ length: count }, (_, order) => {
      const rig = space.rigAt(order)
      return { order, rig, ...weighed(bow, rig, "brace"), inBox: inBox(rig) }
    })
  })()

  /** Whether the kit has the pieces: counted on the rig itself, by the label each piece carries. */
  function inBox(rig: readonly RigEntry[]): boolean {
    const used = new Map<string, number>()
    const count = (elements: readonly { label?: string; part: string; count?: number }[]) => {
      for (const element of elements) {
        if (element.label !== undefined) used.set(element.label, (used.get(element.label) ?? 0) + (element.count ?? 1))
      }
    }
    for (const { chain } of rig) {
      count(chain)
      for (const element of chain) {
        if (element.part === "vbar") count([...(element.left?.chain ?? []), ...(element.right?.chain ?? [])])
      }
    }
    const kit = smallKit()
    const pieces = [...kit.rods, ...kit.extenders, ...kit.vbars, ...kit.dampers, ...kit.discs]
    return pieces.every(({ name, count }) => (used.get(name) ?? 0) <= count)
  }

  test("there are setups that the kit has no pieces for, and no two setups are the same rig", () => {
    expect(all.length).toBeGreaterThan(2000)
    expect(all.some(({ inBox }) => !inBox)).toBe(true)
    expect(new Set(all.map(({ rig }) => JSON.stringify(rig))).size).toBe(all.length)
  })

  test("no rod is ever loaded past its maker's rating", () => {
    const overloaded = all.filter(({ rig }) =>
      rig.some(({ chain }) => {
        const at = chain.findIndex((element) => element.part === "rod" && element.maxEndWeightG !== undefined)
        const beyond = chain.slice(at + 1).map((part) => (part.part === "weights" ? part.count * part.eachG : 29))
        return at >= 0 && beyond.reduce((sum, mass) => sum + mass, 0) > 60
      }),
    )
    expect(overloaded).toEqual([])
  })

  const edge = (key: "massG" | "pitch" | "yaw" | "netLiftNm" | "reachSideMm" | "reachForwardMm") =>
    fc.nat(all.length - 1).map((index) => all[index]![key] + 1e-7)
  const band = (axis: number, half: number) =>
    fc.nat(all.length - 1).map((index): [number, number] => {
      const middle = all[index]!.centreMm[axis]!
      return [middle - half, middle + half + 1]
    })
  const target = fc.record(
    {
      ...{ forwardMm: band(0, 20), upMm: band(1, 15), massMaxG: edge("massG"), pitchLeast: edge("pitch") },
      ...{ yawLeast: edge("yaw"), reachSideMm: edge("reachSideMm"), reachForwardMm: edge("reachForwardMm") },
      netLiftNm: edge("netLiftNm").map((value): [number, number] => [value - 0.3, value + 0.2]),
    },
    { requiredKeys: [] },
  )

  test("the same setups meet the limits, and the same ones come first", () => {
    fc.assert(
      fc.property(
        target,
        fc.constantFrom("nearest", "lightest", "steadiest", "steadyForMass" as const),
        (limits, score) => {
          const usable = Object.fromEntries(Object.entries(limits).filter(([, value]) => !Object.is(value, -Infinity)))
          const found = listed(spaceOf(question({ target: usable as FindQuestion["target"], score, count: 200 })))
          const met = all.filter((each) => each.inBox && meets(each, usable)).map((each) => scored(each, usable, score))
          const best = met.sort((a, b) => a - b).slice(0, 200)
          expect(found).toHaveLength(best.length)
          found.forEach((each, index) => {
            expect(scored(each, usable, score)).toBeCloseTo(best[index]!, 8)
          })
        },
      ),
      { seed: 20_431, numRuns: 150 },
    )
  })

  type Limits = Partial<FindQuestion["target"]>
  type Figured = Pick<FoundSetup, "massG" | "centreMm" | "netLiftNm" | "pitch" | "yaw" | "roll">

  function meets(each: Weighed, limits: Limits): boolean {
    const within = (value: number, range: readonly [number, number] | undefined) =>
      range === undefined || (value >= range[0] && value <= range[1])
    return (
      within(each.centreMm[0], limits.forwardMm) &&
      within(each.centreMm[1], limits.upMm) &&
      within(each.netLiftNm, limits.netLiftNm) &&
      each.massG <= (limits.massMaxG ?? Number.POSITIVE_INFINITY) &&
      each.pitch >= (limits.pitchLeast ?? 0) &&
      each.yaw >= (limits.yawLeast ?? 0) &&
      each.reachSideMm <= (limits.reachSideMm ?? Number.POSITIVE_INFINITY) &&
      each.reachForwardMm <= (limits.reachForwardMm ?? Number.POSITIVE_INFINITY)
    )
  }

  function scored(each: Figured, limits: Limits, score: FindQuestion["score"]): number {
    const off = (value: number, range: readonly [number, number] | undefined) =>
      range === undefined ? 0 : (value - (range[0] + range[1]) / 2) / ((range[1] - range[0]) / 2)
    const resistance = each.pitch + each.yaw + each.roll
    switch (score) {
      case "nearest":
        return Math.hypot(
          off(each.centreMm[0], limits.forwardMm),
          off(each.centreMm[1], limits.upMm),
          off(each.netLiftNm, limits.netLiftNm),
        )
      case "lightest":
        return each.massG
      case "steadiest":
        return -resistance
      case "steadyForMass":
        return -resistance / (each.massG / 1e3)
    }
  }
})

describe("what may be built where", () => {
  test("mounts that are not named keep what they carry, swing weights and all", () => {
    for (const { rig } of listed(spaceOf(question()))) {
      expect(rig.filter(({ mount }) => mount !== "front")).toEqual(bow.rig.filter(({ mount }) => mount !== "front"))
    }
  })

  test("arms alike are mirror images; free arms may differ, and one may be missing", () => {
    const arms = (kind: "alike" | "free") => {
      const space = spaceOf(question({ arms: kind, mostDiscs: 1 }))
      const step = kind === "alike" ? 1 : 37
      const count = Math.floor(combinations(space.problem) / step)
      return Array.from({ length: count }, (_, index) => space.rigAt(index * step)).flatMap((rig) =>
        rig.flatMap(({ chain }) => chain.flatMap((part) => (part.part === "vbar" ? [part] : []))),
      )
    }
    expect(arms("alike").every(({ left, right }) => JSON.stringify(left) === JSON.stringify(right))).toBe(true)
    const free = arms("free")
    expect(free.some(({ left, right }) => left !== undefined && right === undefined)).toBe(true)
    expect(free.some(({ left, right }) => left?.splayDeg !== right?.splayDeg)).toBe(true)
  })

  test("a rod for the front never stands on an arm, one for the sides only there", () => {
    const kit = smallKit()
    const sided = {
      ...kit,
      rods: kit.rods.map((each) => (each.name === "short" ? { ...each, use: "side" as const } : each)),
    }
    const space = spaceOf(question({ mostDiscs: 0 }), bow, sided)
    const rigs = Array.from({ length: combinations(space.problem) }, (_, order) => space.rigAt(order))
    const names = (chain: readonly { label?: string; part: string }[] = []) =>
      chain.flatMap(({ part, label }) => (part === "rod" ? [label] : []))
    const front = rigs.flatMap((rig) => names(rig.find(({ mount }) => mount === "front")?.chain))
    const side = rigs.flatMap((rig) =>
      rig.flatMap(({ chain }) => chain.flatMap((part) => (part.part === "vbar" ? names(part.left?.chain) : []))),
    )
    expect([new Set(front), new Set(side)]).toEqual([new Set(["long"]), new Set(["short"])])
  })

  test("a front rod and a V-bar that must be there are there", () => {
    const rigs = (always: FindQuestion["always"]) => {
      const space = spaceOf(question({ always, mostDiscs: 1 }))
      return Array.from(
        { length: combinations(space.problem) },
        (_, order) =>
          space
            .rigAt(order)
            .find(({ mount }) => mount === "front")
            ?.chain.map(({ part }) => part) ?? [],
      )
    }
    const free = rigs({ frontRod: false, vbar: false })
    expect(free.filter((parts) => parts.includes("rod") && parts.includes("vbar")).length).toBeLessThan(free.length)
    const both = rigs({ frontRod: true, vbar: true })
    expect(both).toEqual(free.filter((parts) => parts.includes("rod") && parts.includes("vbar")))
  })

  test("of the same pieces only the best angles are listed where that is asked", () => {
    const asked = question({ target: { forwardMm: [25, 45], upMm: [-30, 10] }, count: 60 })
    const each = listed(spaceOf({ ...asked, count: 200 }))
    const sets = listed(spaceOf({ ...asked, variety: "pieces" }))
    const pieces = ({ rig }: FoundSetup) =>
      JSON.stringify(rig, (key, value) => (key.endsWith("Deg") ? undefined : value))
    const firsts = each.filter((setup, index) => each.findIndex((other) => pieces(other) === pieces(setup)) === index)
    expect(firsts.length).toBeLessThan(each.length)
    expect(sets.slice(0, firsts.length)).toEqual(firsts.slice(0, sets.length))
    expect(new Set(sets.map(pieces)).size).toBe(sets.length)
  })

  test("an order leads to its own options and back to the same rig", () => {
    const space = spaceOf(question())
    const { trunk, options } = chosenAt(space.problem, 1234)
    expect(options).toHaveLength(space.problem.trunks[trunk]!.branches.length)
    expect(space.rigAt(1234)).toEqual(space.rigAt(1234))
  })
})

test("the question a bow suggests takes its own targets and leaves swing weights where they hang", () => {
  const asked = questionFor({ ...bow, target: { forwardMm: [30, 70], massMaxG: 3900 } })
  expect(asked.mounts).toEqual(["front", "lower"])
  expect(asked.vbarMount).toBe("front")
  expect(asked.target).toEqual({ forwardMm: [30, 70], massMaxG: 3900 })
})

test("what cannot be searched is refused with its place", () => {
  const refused = (asked: Partial<FindQuestion>, kit = smallKit()) => {
    const result = setupSpace(bow, kit, question(asked))
    return result.ok ? [] : spaceErrors(result.fault).map(errorLine)
  }
  expect(refused({ mounts: [] })).toEqual(["mounts: none given; at least one mount to build on is needed"])
  expect(refused({ mounts: ["front", "back"] })).toEqual([
    'mounts: a swing weight hangs on "back" and the kit has none: leave this mount out',
  ])
  expect(refused({ mounts: ["lower"] })).toEqual(['vbarMount: "front" is not among the mounts that are built anew'])
  expect(refused({ target: { upMm: [5, 3] } })).toEqual(["target.upMm: 5 to 3 given; the smaller number comes first"])
  const bare = { ...smallKit(), vbars: [], rods: [] }
  const always = { frontRod: true, vbar: true }
  expect(refused({ always }, bare)).toEqual(["always.vbar: a V-bar has to be there, but the kit has none"])
  expect(refused({ always, vbarMount: null }, bare)).toEqual([
    "always.frontRod: a front rod has to be there, but the kit has none",
  ])
  const armless = { ...smallKit(), rods: [{ ...smallKit().rods[0]!, use: "front" as const }] }
  expect(refused({ always }, armless)[0]).toMatch(/^nothing can be built/)
  const many = {
    ...smallKit(),
    discs: Array.from({ length: 12 }, (_, at) => ({ ...smallKit().discs[0]!, name: `${at}`, count: 20 })),
  }
  expect(refused({ mostDiscs: 20 }, many)[0]).toMatch(/^mostDiscs: .* possibilities; fewer discs/)
})
