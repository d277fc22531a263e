import * as fc from "fast-check"
import { expect, test } from "vitest"
import { clearNumber, setNumber } from "../../src/commands/numbers"
import {
  addArm,
  addChain,
  addPart,
  duplicateItem,
  moveItem,
  removeItem,
  renameItem,
  toggleExtender,
} from "../../src/commands/parts"
import { chainsOf } from "../../src/scene/address"
import { parseScene, validateScene } from "../../src/scene/parse"
import { mountNames } from "../../src/scene/mountNames"
import { serializeScene } from "../../src/scene/serialize"
import { slotsOf } from "../../src/scene/slots"
import type { Bench } from "../../src/state/bench"
import { figures } from "../../src/state/derived"
import { fullBench, fullScene, sceneOn, stepsOn } from "./benches"

/** Long enough to meet undo inside a drag, lists that grow and shrink, and a future that is cut off. */
const STEPS = 25
const WALKS = 60
/** Fixed, so that a run can be repeated; a seed that once failed is added here. */
const SEEDS = [20_257, 31]

const kinds = ["extender", "rod", "damper", "weights", "vbar", "swing"] as const

/** One thing a person might do. `pick` chooses among what the scene has at that moment; `part` is from 0 to 1. */
type Act = (bench: Bench, pick: (count: number) => number, part: number) => void

const anyChain = (bench: Bench, pick: (count: number) => number) => {
  const chains = chainsOf(sceneOn(bench))
  return chains[pick(chains.length)]
}
const anyElement = (bench: Bench, pick: (count: number) => number) => {
  const chain = anyChain(bench, pick)
  return chain === undefined ? ["rig", 0, "chain", 0] : [...chain.address, pick(chain.chain.length)]
}
const anySlot = (bench: Bench, pick: (count: number) => number) => {
  const slots = slotsOf(sceneOn(bench))
  return slots[pick(slots.length)]!
}

const acts: Readonly<Record<string, Act>> = {
  set(bench, pick, part) {
    const { key, field } = anySlot(bench, pick)
    // A little beyond the range at both ends, so that some are refused.
    const value = field.min + (1.1 * part - 0.05) * (field.max - field.min)
    setNumber.run(bench, { key, value: field.whole ? Math.round(value) : value })
  },
  nudge(bench, pick, part) {
    const { key, value, field } = anySlot(bench, pick)
    setNumber.run(bench, { key, value: value + (part < 0.5 ? -field.step : field.step) })
  },
  clear: (bench, pick) => void clearNumber.run(bench, { key: anySlot(bench, pick).key }),
  add(bench, pick) {
    const chain = anyChain(bench, pick)
    if (chain !== undefined) addPart.run(bench, { chain: chain.address, part: kinds[pick(kinds.length)]! })
  },
  use: (bench, pick) => void addChain.run(bench, { mount: mountNames[pick(4)]!, part: kinds[pick(kinds.length)]! }),
  remove: (bench, pick) => void removeItem.run(bench, { address: anyElement(bench, pick), name: "part" }),
  move: (bench, pick) => void moveItem.run(bench, { address: anyElement(bench, pick), by: pick(5) - 2, name: "part" }),
  copy: (bench, pick) => void duplicateItem.run(bench, { address: anyElement(bench, pick), name: "part" }),
  rename: (bench, pick) =>
    void renameItem.run(bench, { address: anyElement(bench, pick), name: ["", "x", "y"][pick(3)]! }),
  extender(bench, pick) {
    const chain = anyChain(bench, pick)
    if (chain !== undefined) toggleExtender.run(bench, { chain: chain.address })
  },
  arm(bench, pick) {
    const vbar = anyElement(bench, pick)
    const side = pick(2) === 0 ? "left" : "right"
    if (!addArm.run(bench, { vbar, side }).ok) removeItem.run(bench, { address: [...vbar, side], name: "arm" })
  },
  pair: (bench) => bench.setPreferences({ pairArms: !bench.store.getState().preferences.pairArms }),
  begin: (bench) => bench.begin("drag"),
  commit: (bench) => bench.commit(),
  cancel: (bench) => bench.cancel(),
  undo: (bench) => bench.undo(),
  redo: (bench) => bench.redo(),
}

const walk = fc.array(
  fc.record({
    act: fc.constantFrom(...Object.keys(acts)),
    picks: fc.array(fc.nat(1000), { minLength: 3, maxLength: 3 }),
    part: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  { minLength: 2, maxLength: STEPS, size: "max" },
)

function take(bench: Bench, { act, picks, part }: { act: string; picks: number[]; part: number }): void {
  let next = 0
  acts[act]!(bench, (count) => (count === 0 ? 0 : picks[next++ % picks.length]! % count), part)
}

for (const seed of SEEDS) {
  test(`any walk of acts leaves a scene that stands and numbers that are its own, and undoing all gives the first (seed ${seed})`, () => {
    let changed = 0
    fc.assert(
      fc.property(walk, (taken) => {
        const bench = fullBench()
        for (const step of taken) {
          take(bench, step)
          const { scene, evaluation } = bench.store.getState()
          // What is on the bench is complete: reading it as a file adds and alters nothing.
          expect(validateScene(scene)).toEqual({ ok: true, value: scene })
          expect(evaluation.scene).toEqual(scene)
          const { massG, noseDownNm, fullDraw } = figures(bench.store.getState())
          expect([massG, noseDownNm, fullDraw.netLiftNm].every(Number.isFinite)).toBe(true)
        }
        bench.commit()
        const last = sceneOn(bench)
        expect(parseScene(serializeScene(last))).toEqual({ ok: true, value: last })
        const steps = stepsOn(bench).length
        changed += steps
        while (stepsOn(bench).length > 0) bench.undo()
        expect(sceneOn(bench)).toEqual(fullScene())
        for (let step = 0; step < steps; step++) bench.redo()
        expect(sceneOn(bench)).toEqual(last)
      }),
      { seed, numRuns: WALKS },
    )
    // The walks do something: on average several steps each.
    expect(changed).toBeGreaterThan(3 * WALKS)
  })
}
