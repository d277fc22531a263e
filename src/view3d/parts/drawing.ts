import type { Object3D } from "three"
import type { WeighedPart } from "../../scene/evaluate"
import type { PictureFrame } from "../picture"

/** One part as drawn, in bow axes. */
export interface PartDrawing {
  readonly object: Object3D
  /** Puts it where the part now is, without making anything new. */
  update(part: WeighedPart, frame: Pick<PictureFrame, "evaluation">): void
  /** Gives back the shapes that are its own. */
  dispose?(): void
}
