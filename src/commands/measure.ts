import { failure } from "../scene/errors"
import { measureResult } from "../scene/measure"
import { validateScene } from "../scene/parse"
import type { Measurement } from "../scene/schema"
import { edits } from "../words/edits"
import type { Command, NamedCommand } from "./command"
import { listOf, putEntry, putList } from "./lists"

/** Adds a reading of the real bow at the end of the list. */
export const addReading: Command<{ reading: Measurement }> = {
  id: "add-reading",
  run: (bench, { reading }) =>
    putList(bench, "measurements", edits.readingAdded, [...listOf(bench, "measurements"), reading]),
}

export const changeReading: Command<{ place: number; reading: Measurement }> = {
  id: "change-reading",
  run: (bench, { place, reading }) =>
    putEntry(bench, "measurements", place, edits.readingChanged(String(place + 1)), () => reading),
}

/** Leaves a reading out of the fit, or takes it in again; it stays in the list. */
export const excludeReading: Command<{ place: number; excluded: boolean }> = {
  id: "exclude-reading",
  run: (bench, { place, excluded }) =>
    putEntry(
      bench,
      "measurements",
      place,
      (excluded ? edits.readingOut : edits.readingIn)(String(place + 1)),
      (found) => ({ ...found, excluded }),
    ),
}

export const removeReading: Command<{ place: number }> = {
  id: "remove-reading",
  run: (bench, { place }) =>
    putEntry(bench, "measurements", place, edits.readingRemoved(String(place + 1)), () => null),
}

/** Gives the bow the riser that its readings say it has, as one undo step. What they do not determine stays. */
export const applyReadings: NamedCommand = {
  id: "apply-readings",
  label: edits.applyReadings,
  enabled: ({ scene }) => (scene.measurements ?? []).some(({ excluded }) => !excluded),
  run(bench) {
    const { scene } = bench.store.getState()
    const result = measureResult(scene)
    if (result === null) {
      return failure({ code: "not-allowed", path: "", message: edits.noReading })
    }
    if (!result.ok) return result
    const { fit, riser } = result.value
    if (!fit.converged) {
      return failure({ code: "contradiction", path: "", message: edits.noRiser })
    }
    const valid = validateScene({ ...scene, bow: { ...scene.bow, riser } })
    if (!valid.ok) return valid
    return bench.change(edits.riserFromReadings, (draft) => {
      draft.bow.riser = { ...riser, centreMm: [...riser.centreMm], gyrationMm: [...riser.gyrationMm] }
    })
  },
}
