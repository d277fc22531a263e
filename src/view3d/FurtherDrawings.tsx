import { Piece } from "./Drawings"
import { besideOverlay } from "./overlays/beside"
import { fullDrawOverlay } from "./overlays/fullDraw"
import { hillsideOverlay } from "./overlays/hillside"
import { pullDrawing } from "./parts/pull"
import { lockedWeightsOverlay } from "./overlays/lockedWeights"
import type { Picture } from "./picture"

const hillside = ({ looks, labels }: Picture) => hillsideOverlay(looks, labels)
const pull = ({ looks }: Picture) => pullDrawing(looks)

const fullDraw = ({ looks, labels }: Picture) => fullDrawOverlay(looks, labels)
const other = ({ looks, labels }: Picture) => besideOverlay(looks, labels)
const locked = ({ looks, labels }: Picture) => lockedWeightsOverlay(looks, labels)

/** What is drawn of a bow off the level, drawn, in motion or beside another setup. */
export default function FurtherDrawings() {
  return (
    <>
      <Piece make={pull} />
      <Piece make={hillside} />
      <Piece make={fullDraw} />
      <Piece make={locked} />
      <Piece make={other} />
    </>
  )
}
