import { failure, type Result } from "../scene/errors"
import { validateScene } from "../scene/parse"
import type { Scene, Tried } from "../scene/schema"
import type { Bench } from "../state/bench"
import type { Command } from "./command"

function putLog(bench: Bench, label: string, entries: readonly Tried[]): Result<void> {
  const log = entries.length === 0 ? undefined : ([...entries] as Scene["log"])
  const valid = validateScene({ ...bench.store.getState().scene, log })
  if (!valid.ok) return valid
  return bench.change(label, (draft) => {
    if (log === undefined) delete draft.log
    else draft.log = structuredClone(log) as typeof draft.log
  })
}

const logOf = (bench: Bench): readonly Tried[] => bench.store.getState().scene.log ?? []

const atEntry = (bench: Bench, place: number, then: (found: Tried) => Result<void>): Result<void> => {
  const found = logOf(bench)[place]
  if (found !== undefined) return then(found)
  return failure({ code: "not-allowed", path: `log[${place}]`, message: "there is no such setup in the log" })
}

/** What is written beside a tried setup; its rig is the one on the bench when it was logged. */
export type Impression = Omit<Tried, "rig">

/** Notes the rig on the bench as tried, at the end of the log. */
export const logSetup: Command<{ impression: Impression }> = {
  id: "log-setup",
  label: "Note this setup",
  run: (bench, { impression }) =>
    putLog(bench, "setup noted in the log", [
      ...logOf(bench),
      { ...impression, rig: bench.store.getState().scene.rig },
    ]),
}

export const changeImpression: Command<{ place: number; impression: Impression }> = {
  id: "change-impression",
  label: "Change the entry",
  run: (bench, { place, impression }) =>
    atEntry(bench, place, (found) =>
      putLog(
        bench,
        `log entry ${place + 1} changed`,
        logOf(bench).map((each) => (each === found ? { ...impression, rig: found.rig } : each)),
      ),
    ),
}

export const removeSetup: Command<{ place: number }> = {
  id: "remove-setup",
  label: "Remove the entry",
  run: (bench, { place }) =>
    atEntry(bench, place, (found) =>
      putLog(
        bench,
        `log entry ${place + 1} removed`,
        logOf(bench).filter((each) => each !== found),
      ),
    ),
}

/** Puts a tried setup's rig on the bow again, as one undo step. */
export const tryAgain: Command<{ place: number }> = {
  id: "try-again",
  label: "Put on the bow",
  run: (bench, { place }) =>
    atEntry(bench, place, ({ rig, name }) => {
      const valid = validateScene({ ...bench.store.getState().scene, rig })
      if (!valid.ok) return valid
      return bench.change(`tried setup put on the bow${name === "" ? "" : `: ${name}`}`, (draft) => {
        draft.rig = structuredClone(rig) as typeof draft.rig
      })
    }),
}
