import { Piece } from "./Drawings"
import { comparedOverlay } from "./overlays/compared"
import { fullDrawOverlay } from "./overlays/fullDraw"
import { hillsideOverlay } from "./overlays/hillside"
import { pullDrawing } from "./parts/pull"
import { lockedWeightsOverlay } from "./overlays/lockedWeights"
import type { Picture } from "./picture"

const hillside = ({ looks, labels }: Picture) => hillsideOverlay(looks, labels)
const pull = ({ looks }: Picture) => pullDrawing(looks)

const fullDraw = ({ looks, labels }: Picture) => fullDrawOverlay(looks, labels)
const compared = ({ looks }: Picture) => comparedOverlay(looks)
const locked = ({ looks, labels }: Picture) => lockedWeightsOverlay(looks, labels)

/** What is drawn of a bow off the level, drawn, in motion or compared with another setup. */
export default function FurtherDrawings() {
  return (
    <>
      <Piece make={pull} />
      <Piece make={hillside} />
      <Piece make={fullDraw} />
      <Piece make={locked} />
      <Piece make={compared} />
    </>
  )
}
