import { Piece } from "./Drawings"
import { hillsideOverlay } from "./overlays/hillside"
import { pullDrawing } from "./parts/pull"
import type { Picture } from "./picture"

const hillside = ({ looks, labels }: Picture) => hillsideOverlay(looks, labels)
const pull = ({ looks }: Picture) => pullDrawing(looks)

/** What is drawn of a bow off the level. */
export default function FurtherDrawings() {
  return (
    <>
      <Piece make={pull} />
      <Piece make={hillside} />
    </>
  )
}
