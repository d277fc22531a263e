import { Piece } from "./Drawings"
import { fullDrawOverlay } from "./overlays/fullDraw"
import { hillsideOverlay } from "./overlays/hillside"
import { pullDrawing } from "./parts/pull"
import { lockedWeightsOverlay } from "./overlays/lockedWeights"
import type { Picture } from "./picture"

const hillside = ({ looks, labels }: Picture) => hillsideOverlay(looks, labels)
const pull = ({ looks }: Picture) => pullDrawing(looks)

const fullDraw = ({ looks, labels }: Picture) => fullDrawOverlay(looks, labels)
const locked = ({ looks, labels }: Picture) => lockedWeightsOverlay(looks, labels)

/** What is drawn of a bow off the level, drawn or in motion. */
export default function FurtherDrawings() {
  return (
    <>
      <Piece make={pull} />
      <Piece make={hillside} />
      <Piece make={fullDraw} />
      <Piece make={locked} />
    </>
  )
}
