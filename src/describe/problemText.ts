import { errorLine, pathText, type SceneError } from "../scene/errors"
import type { Scene } from "../scene/schema"
import { slotsOf } from "../scene/slots"
import { partTitle, slotTitle } from "./partNames"

/** Why something was refused: each error with its place called as the page calls it, in one text. */
export const problemText = (scene: Scene, errors: readonly SceneError[]): string =>
  errors.map((error) => `${placed(scene, error).replace(/\.$/, "")}.`).join(" ")

function placed(scene: Scene, error: SceneError): string {
  if (error.path === "") return error.message
  const here = slotsOf(scene).map((slot) => ({ slot, path: pathText(slot.address) }))
  const exact = here.find(({ path }) => path === error.path)
  if (exact !== undefined) return `${slotTitle(scene, exact.slot)}: ${error.message}`
  // A rule between the numbers of one list, such as both ends of a target.
  const inside = here.find(({ path }) => path.startsWith(`${error.path}[`))
  if (inside !== undefined)
    return `${partTitle(scene, inside.slot.owner)}, ${inside.slot.field.label}: ${error.message}`
  return errorLine(error)
}
