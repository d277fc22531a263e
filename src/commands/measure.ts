import { failure, type Result } from "../scene/errors"
import { measureResult } from "../scene/measure"
import { validateScene } from "../scene/parse"
import type { Measurement, Scene } from "../scene/schema"
import type { Bench } from "../state/bench"
import type { Command } from "./command"

/** Puts another list of readings on the bench as one undo step; one that no file could hold is refused. */
function putReadings(bench: Bench, label: string, readings: readonly Measurement[]): Result<void> {
  const measurements = readings.length === 0 ? undefined : ([...readings] as Scene["measurements"])
  const valid = validateScene({ ...bench.store.getState().scene, measurements })
  if (!valid.ok) return valid
  return bench.change(label, (draft) => {
    if (measurements === undefined) delete draft.measurements
    else draft.measurements = structuredClone(measurements) as typeof draft.measurements
  })
}

const readingsOf = (bench: Bench): readonly Measurement[] => bench.store.getState().scene.measurements ?? []

const noSuchReading = (place: number): Result<never> =>
  failure({ code: "not-allowed", path: `measurements[${place}]`, message: "there is no such reading" })

const atPlace = (bench: Bench, place: number, then: (found: Measurement) => Result<void>): Result<void> => {
  const found = readingsOf(bench)[place]
  return found === undefined ? noSuchReading(place) : then(found)
}

/** Adds a reading of the real bow at the end of the list. */
export const addReading: Command<{ reading: Measurement }> = {
  id: "add-reading",
  label: "Add the reading",
  run: (bench, { reading }) => putReadings(bench, "reading added", [...readingsOf(bench), reading]),
}

export const changeReading: Command<{ place: number; reading: Measurement }> = {
  id: "change-reading",
  label: "Change the reading",
  run: (bench, { place, reading }) =>
    atPlace(bench, place, () =>
      putReadings(
        bench,
        `reading ${place + 1} changed`,
        readingsOf(bench).map((each, index) => (index === place ? reading : each)),
      ),
    ),
}

/** Leaves a reading out of the fit, or takes it in again; it stays in the list. */
export const excludeReading: Command<{ place: number; excluded: boolean }> = {
  id: "exclude-reading",
  label: "Leave out",
  run: (bench, { place, excluded }) =>
    atPlace(bench, place, (found) =>
      putReadings(
        bench,
        `reading ${place + 1} ${excluded ? "left out" : "taken in"}`,
        readingsOf(bench).map((each) => (each === found ? { ...found, excluded } : each)),
      ),
    ),
}

export const removeReading: Command<{ place: number }> = {
  id: "remove-reading",
  label: "Remove the reading",
  run: (bench, { place }) =>
    atPlace(bench, place, (found) =>
      putReadings(
        bench,
        `reading ${place + 1} removed`,
        readingsOf(bench).filter((each) => each !== found),
      ),
    ),
}

/** Gives the bow the riser that its readings say it has, as one undo step. What they do not determine stays. */
export const applyReadings: Command = {
  id: "apply-readings",
  label: "Put on the bow",
  enabled: ({ scene }) => (scene.measurements ?? []).some(({ excluded }) => !excluded),
  run(bench) {
    const result = measureResult(bench.store.getState().scene)
    if (result === null) {
      return failure({ code: "not-allowed", path: "measurements", message: "no reading counts yet" })
    }
    if (!result.ok) return result
    const { fit, riser } = result.value
    if (!fit.converged) {
      return failure({
        code: "contradiction",
        path: "measurements",
        message: "the readings contradict each other: no riser fits them",
      })
    }
    const applied = { ...bench.store.getState().scene, bow: { ...bench.store.getState().scene.bow, riser } }
    const valid = validateScene(applied)
    if (!valid.ok) return valid
    return bench.change("measured riser put on the bow", (draft) => {
      draft.bow.riser = { ...riser, centreMm: [...riser.centreMm], gyrationMm: [...riser.gyrationMm] }
    })
  },
}
