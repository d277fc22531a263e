import { errorLine, pathText, type SceneError } from "../scene/errors"
import type { Scene } from "../scene/schema"
import { slotsOf } from "../scene/slots"
import { partTitle } from "./partNames"

/** Why something was refused: each error with its place called as the page calls it, in one text. */
export const problemText = (scene: Scene, errors: readonly SceneError[]): string =>
  errors.map((error) => `${placed(scene, error)}.`).join(" ")

function placed(scene: Scene, error: SceneError): string {
  const slot = slotsOf(scene).find(({ address }) => pathText(address) === error.path)
  if (slot === undefined) return errorLine(error)
  return `${partTitle(scene, slot.owner)}, ${slot.label}: ${error.message}`
}
