import { fileFaults } from "../words/fileFaults"
import { sceneFaults as faults } from "../words/sceneFaults"
import { pathText, type SceneError } from "../scene/errors"
import type { Scene } from "../scene/schema"
import { slotsOf } from "../scene/slots"
import { errorText } from "./errorText"
import type { UnitChoice } from "./format"
import { slotTitle } from "./partNames"

/** What the page stands at: where the refusal happened and the units that it is said in. */
interface Page {
  readonly scene: Scene
  readonly preferences: UnitChoice
}

/** Why something was refused: each error with its place called as the page calls it, in one text. */
export const problemText = (page: Page, errors: readonly SceneError[]): string =>
  errors.map((error) => `${placed(page, error).replace(/\.$/, "")}.`).join(" ")

function placed({ scene, preferences }: Page, error: SceneError): string {
  const text = errorText(error, preferences)
  if (error.path === "") return text
  const here = slotsOf(scene).map((slot) => ({ slot, path: pathText(slot.address) }))
  const exact = here.find(({ path }) => path === error.path)
  if (exact !== undefined) return faults.at(slotTitle(scene, exact.slot), text)
  // A rule between the numbers of one list, such as both ends of a target.
  const inside = here.find(({ path }) => path.startsWith(`${error.path}[`))
  if (inside !== undefined) return faults.at(slotTitle(scene, { ...inside.slot, label: inside.slot.field.label }), text)
  return faults.at(listPlace(error.path), text)
}

/** "Reading 3", "Setup 2": an entry of the lists that the page numbers from 1; any other path as it is. */
const listPlace = (path: string): string =>
  path.replace(/^(measurements|log)\[(\d+)\].*/, (_, list: string, place: string) =>
    (list === "log" ? fileFaults.setup : fileFaults.reading)(Number(place) + 1),
  )
