import { describe, expect, test } from "vitest"
import { searchWhole } from "../../../src/core/find"
import {
  type Asked,
  foundSetup,
  type Order,
  type Outcome,
  type Progress,
  questionFor,
  type Report,
  serveFind,
  setupSpace,
  startFind,
} from "../../../src/scene/find"
import { readKit } from "../../../src/scene/kit"
import { validateScene } from "../../../src/scene/parse"
import { discs, rigged, rod } from "../documents"
import { kitDocument } from "../kit/kits"

const needed = <T>(result: { ok: true; value: T } | { ok: false }) => {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}
const scene = needed(validateScene(rigged({ front: [rod(), discs()] })))
const kit = needed(readKit(kitDocument()))
const asked = (target: Asked["question"]["target"], more: Partial<Asked["question"]> = {}): Asked => ({
  scene,
  kit,
  question: { ...questionFor(scene), arms: "free", mostDiscs: 2, target, count: 7, ...more },
})

const soon = () => new Promise<void>((resolve) => setTimeout(resolve))

/** Workers in this very process; `dies` says which report of which worker is its last. */
function workshop(dies: (worker: number, report: number) => boolean = () => false) {
  let started = 0
  const spawn = (onReport: (report: Report) => void, onDeath: (reason: string) => void) => {
    const worker = started++
    let alive = true
    let reports = 0
    const serve = serveFind((report) => {
      if (!alive) return
      if (report.kind !== "alive" && dies(worker, reports++)) {
        alive = false
        setTimeout(() => onDeath("it was shot"))
      } else setTimeout(() => alive && onReport(structuredClone(report)))
    }, soon)
    return {
      post(order: Order) {
        const copy = structuredClone(order)
        setTimeout(() => alive && serve(copy))
      },
      end() {
        alive = false
      },
    }
  }
  return { spawn, started: () => started }
}

function run(what: Asked, workers: number, dies?: (worker: number, report: number) => boolean) {
  const { spawn, started } = workshop(dies)
  const told: Progress[] = []
  return new Promise<{ outcome: Outcome; told: Progress[]; started: number }>((resolve) => {
    startFind(
      what,
      workers,
      spawn,
      (progress) => told.push(progress),
      (outcome) => resolve({ outcome, told, started: started() }),
    )
  })
}

const expected = (what: Asked) => {
  const space = needed(setupSpace(what.scene, what.kit, what.question))
  return searchWhole(space.problem).found.map((found) => foundSetup(space, found))
}
const searched = (outcome: Outcome) => {
  if (outcome.kind !== "searched") throw new Error(outcome.kind)
  return outcome
}

const box = { forwardMm: [20, 60], sideMm: [-4, 6], massMaxG: 3300 } as Asked["question"]["target"]

describe("a search on several workers", () => {
  test.each([1, 2, 5])(
    "with %i the list is the whole search's, proved, and every setup is counted once",
    async (many) => {
      const { outcome, told } = await run(asked(box), many)
      const { setups, proved, covered, combinations, trouble } = searched(outcome)
      expect(setups).toEqual(expected(asked(box)))
      expect([proved, covered, trouble]).toEqual([true, combinations, null])
      for (let index = 1; index < told.length; index++) {
        expect(told[index]!.covered).toBeGreaterThanOrEqual(told[index - 1]!.covered)
      }
    },
  )

  test("a worker that dies at work is replaced, and the list is the same", async () => {
    const { outcome, started } = await run(asked(box), 2, (worker, report) => worker < 2 && report === 2 + worker)
    expect(started).toBe(4)
    expect(searched(outcome).setups).toEqual(expected(asked(box)))
    expect(searched(outcome).proved).toBe(true)
    expect(searched(outcome).lost).toEqual(["it was shot", "it was shot"])
  })

  test("when every worker dies, what was found is kept and the reason is told", async () => {
    const { outcome } = await run(asked(box), 1, (worker, report) => (worker < 1 ? report === 5 : report === 0))
    const { proved, trouble, setups } = searched(outcome)
    expect([proved, trouble]).toEqual([false, "it was shot"])
    expect(setups.length).toBeGreaterThan(0)
  })

  test("cancelled, it ends at once with what it has, unproved", async () => {
    const { spawn } = workshop()
    const outcome = await new Promise<Outcome>((resolve) => {
      const running = startFind(asked(box), 2, spawn, () => running.cancel(), resolve)
    })
    expect(searched(outcome)).toMatchObject({ proved: false, trouble: null })
  })

  test("a question that cannot be asked is refused with its place", async () => {
    const { outcome } = await run(asked(box, { mounts: [] }), 2)
    expect(outcome).toEqual({ kind: "refused", errors: [expect.objectContaining({ path: "mounts" })] })
  })
})

test("without any setup the nearest miss of each limit is told, in the limits' order", async () => {
  const { outcome } = await run(asked({ forwardMm: [500, 520], massMaxG: 3000 }), 2)
  const { setups, proved, misses } = searched(outcome)
  expect([setups.length, proved]).toEqual([0, true])
  expect(misses.map(({ key }) => key)).toEqual(["forwardMm", "massMaxG"])
  expect(misses[0]!.nearest!.by).toBeGreaterThan(0)
})
