import { validateScene } from "../scene/parse"
import type { Tried } from "../scene/schema"
import { edits } from "../words/edits"
import type { Command } from "./command"
import { listOf, noSuchEntry, putEntry, putList } from "./lists"

/** What is written beside a tried setup; its rig is the one on the bench when it was logged. */
export type Impression = Omit<Tried, "rig">

/** Notes the rig on the bench as tried, at the end of the log. */
export const logSetup: Command<{ impression: Impression }> = {
  id: "log-setup",
  run: (bench, { impression }) =>
    putList(bench, "log", edits.logged, [
      ...listOf(bench, "log"),
      { ...impression, rig: bench.store.getState().scene.rig },
    ]),
}

export const changeImpression: Command<{ place: number; impression: Impression }> = {
  id: "change-impression",
  run: (bench, { place, impression }) =>
    putEntry(bench, "log", place, edits.logChanged(String(place + 1)), ({ rig }) => ({ ...impression, rig })),
}

export const removeSetup: Command<{ place: number }> = {
  id: "remove-setup",
  run: (bench, { place }) => putEntry(bench, "log", place, edits.logRemoved(String(place + 1)), () => null),
}

/** Puts a tried setup's rig on the bow again, as one undo step. */
export const tryAgain: Command<{ place: number }> = {
  id: "try-again",
  run(bench, { place }) {
    const found = listOf(bench, "log")[place]
    if (found === undefined) return noSuchEntry("log", place)
    const { rig, name } = found
    const valid = validateScene({ ...bench.store.getState().scene, rig })
    if (!valid.ok) return valid
    return bench.change(edits.triedAgain(name), (draft) => {
      draft.rig = structuredClone(rig) as typeof draft.rig
    })
  },
}
