import type { PartKind } from "../../scene/assemble"
import type { Looks } from "../looks"
import { arrowPart, limbsPart, riserPart, stringPart } from "./bow"
import { damperPart, swingPart, tubePart, vbarPart, weightsPart } from "./chain"
import type { PartDrawing } from "./drawing"
import { accessoryPart } from "./fixed"

const drawings: { readonly [K in PartKind]: (looks: Looks) => PartDrawing } = {
  riser: riserPart,
  limbs: limbsPart,
  string: stringPart,
  arrow: arrowPart,
  accessory: accessoryPart,
  extender: (looks) => tubePart(looks, "tube"),
  rod: (looks) => tubePart(looks, "carbon"),
  damper: damperPart,
  weights: weightsPart,
  vbar: vbarPart,
  swing: swingPart,
}

/** A drawing for one part; its object carries the part's path as `userData.path`. */
export function drawPart(kind: PartKind, path: string, looks: Looks): PartDrawing {
  const drawing = drawings[kind](looks)
  drawing.object.userData.path = path
  return drawing
}
