import { arrivingFileRules } from "../../src/files/fileRules"
import type { Scene } from "../../src/scene/schema"
import { slotNamed } from "../../src/scene/slots"
import { type Bench, createBench } from "../../src/state/bench"
import { defaultPreferences } from "../../src/state/preferences"
import { fullDocument } from "../scene/documents"
import { sceneOf } from "../scene/scenes"

/** The scene with something on every mount, both arms, a part twice in a chain and a swing weight. */
export const fullScene = (): Scene => sceneOf(fullDocument())

const { rules, fetch } = arrivingFileRules()
await fetch()

/** A bench as the page has it once the whole file's rules are there. */
export const benchWith = (scene: Scene): Bench => createBench(scene, defaultPreferences, rules)

export const fullBench = (): Bench => benchWith(fullScene())

export const sceneOn = (bench: Bench): Scene => bench.store.getState().scene

/** A number of the scene on the bench, by slot key; undefined where none stands. */
export function numberOn(bench: Bench, key: string): number | undefined {
  const slot = slotNamed(sceneOn(bench), key)
  return slot === undefined || slot.absent ? undefined : slot.value
}

export const stepsOn = (bench: Bench): readonly string[] =>
  bench.store.getState().history.past.map(({ label }) => label)

export const DONE = { ok: true, value: undefined }
