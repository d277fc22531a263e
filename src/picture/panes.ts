import type { Pane } from "./handle"
import type { Projector } from "./projector"

/** A picture of several drawings in one box; taken by itself it projects into the side drawing. */
export interface PanedProjector extends Projector {
  readonly pane: (name: Pane) => Projector
}

/** The projector of the drawing that shows a movement best; a picture of one piece is its own answer. */
export const paneOf = (projector: Projector | PanedProjector, name: Pane): Projector =>
  "pane" in projector ? projector.pane(name) : projector
