import { hasUnsavedChanges } from "../state/bench"
import { type KeptWork, without, withWork } from "../state/setAside"
import { keptMenu as words } from "../words/keptMenu"
import type { Command } from "./command"

/**
 * Puts work that was set aside back on the bench as one undo step. Unsaved work that is there now is set aside for it,
 * with `now` (milliseconds since 1970) as its time, so neither is lost.
 */
export const bringBack: Command<{ work: KeptWork; now: number }> = {
  id: "bring-back",
  run(bench, { work, now }) {
    const state = bench.store.getState()
    const rest = without(state.setAside, work)
    const { scene, fileName } = state
    return bench.load(words.broughtBack(work.scene.name), work.scene, {
      fileName: work.fileName,
      saved: false,
      setAside: hasUnsavedChanges(state) ? withWork(rest, { scene, fileName, at: now }) : rest,
    })
  },
}

/** Throws away work that was set aside; one undo step. */
export const discardKept: Command<KeptWork> = {
  id: "discard-kept",
  run: (bench, work) =>
    bench.keepAside(words.discarded(work.scene.name), without(bench.store.getState().setAside, work)),
}
