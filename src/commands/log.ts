import { validateScene } from "../scene/parse"
import type { Tried } from "../scene/schema"
import type { Command } from "./command"
import { listOf, noSuchEntry, putEntry, putList } from "./lists"

/** What is written beside a tried setup; its rig is the one on the bench when it was logged. */
export type Impression = Omit<Tried, "rig">

/** Notes the rig on the bench as tried, at the end of the log. */
export const logSetup: Command<{ impression: Impression }> = {
  id: "log-setup",
  label: "Note this setup",
  run: (bench, { impression }) =>
    putList(bench, "log", "setup noted in the log", [
      ...listOf(bench, "log"),
      { ...impression, rig: bench.store.getState().scene.rig },
    ]),
}

export const changeImpression: Command<{ place: number; impression: Impression }> = {
  id: "change-impression",
  label: "Change the entry",
  run: (bench, { place, impression }) =>
    putEntry(bench, "log", place, `log entry ${place + 1} changed`, ({ rig }) => ({ ...impression, rig })),
}

export const removeSetup: Command<{ place: number }> = {
  id: "remove-setup",
  label: "Remove the entry",
  run: (bench, { place }) => putEntry(bench, "log", place, `log entry ${place + 1} removed`, () => null),
}

/** Puts a tried setup's rig on the bow again, as one undo step. */
export const tryAgain: Command<{ place: number }> = {
  id: "try-again",
  label: "Put on the bow",
  run(bench, { place }) {
    const found = listOf(bench, "log")[place]
    if (found === undefined) return noSuchEntry("log", place)
    const { rig, name } = found
    const valid = validateScene({ ...bench.store.getState().scene, rig })
    if (!valid.ok) return valid
    return bench.change(`tried setup put on the bow${name === "" ? "" : `: ${name}`}`, (draft) => {
      draft.rig = structuredClone(rig) as typeof draft.rig
    })
  },
}
