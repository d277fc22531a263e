import { failure } from "../scene/errors"
import { measureResult } from "../scene/measure"
import { validateScene } from "../scene/parse"
import type { Measurement } from "../scene/schema"
import type { Command } from "./command"
import { listOf, putEntry, putList } from "./lists"

/** Adds a reading of the real bow at the end of the list. */
export const addReading: Command<{ reading: Measurement }> = {
  id: "add-reading",
  label: "Add the reading",
  run: (bench, { reading }) =>
    putList(bench, "measurements", "reading added", [...listOf(bench, "measurements"), reading]),
}

export const changeReading: Command<{ place: number; reading: Measurement }> = {
  id: "change-reading",
  label: "Change the reading",
  run: (bench, { place, reading }) =>
    putEntry(bench, "measurements", place, `reading ${place + 1} changed`, () => reading),
}

/** Leaves a reading out of the fit, or takes it in again; it stays in the list. */
export const excludeReading: Command<{ place: number; excluded: boolean }> = {
  id: "exclude-reading",
  label: "Leave out",
  run: (bench, { place, excluded }) =>
    putEntry(bench, "measurements", place, `reading ${place + 1} ${excluded ? "left out" : "taken in"}`, (found) => ({
      ...found,
      excluded,
    })),
}

export const removeReading: Command<{ place: number }> = {
  id: "remove-reading",
  label: "Remove the reading",
  run: (bench, { place }) => putEntry(bench, "measurements", place, `reading ${place + 1} removed`, () => null),
}

/** Gives the bow the riser that its readings say it has, as one undo step. What they do not determine stays. */
export const applyReadings: Command = {
  id: "apply-readings",
  label: "Put on the bow",
  enabled: ({ scene }) => (scene.measurements ?? []).some(({ excluded }) => !excluded),
  run(bench) {
    const { scene } = bench.store.getState()
    const result = measureResult(scene)
    if (result === null) {
      return failure({ code: "not-allowed", path: "", message: "no reading counts yet" })
    }
    if (!result.ok) return result
    const { fit, riser } = result.value
    if (!fit.converged) {
      return failure({
        code: "contradiction",
        path: "",
        message: "no riser fits the readings",
      })
    }
    const valid = validateScene({ ...scene, bow: { ...scene.bow, riser } })
    if (!valid.ok) return valid
    return bench.change("measured riser put on the bow", (draft) => {
      draft.bow.riser = { ...riser, centreMm: [...riser.centreMm], gyrationMm: [...riser.gyrationMm] }
    })
  },
}
