import { Piece } from "./Drawings"
import { fullDrawOverlay } from "./overlays/fullDraw"
import { hillsideOverlay } from "./overlays/hillside"
import { pullDrawing } from "./parts/pull"
import type { Picture } from "./picture"

const hillside = ({ looks, labels }: Picture) => hillsideOverlay(looks, labels)
const pull = ({ looks }: Picture) => pullDrawing(looks)

const fullDraw = ({ looks, labels }: Picture) => fullDrawOverlay(looks, labels)

/** What is drawn of a bow off the level or drawn. */
export default function FurtherDrawings() {
  return (
    <>
      <Piece make={pull} />
      <Piece make={hillside} />
      <Piece make={fullDraw} />
    </>
  )
}
