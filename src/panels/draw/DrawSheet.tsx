import { useBench } from "../../state/useBench"
import { draw } from "../../words/draw"
import { Problem } from "../Problem"
import "../sections.css"
import "../sheet.css"
import "./draw.css"
import { DrawPlot } from "./DrawPlot"
import { LineOfPull } from "./LineOfPull"
import { useDrawPlay } from "./useDrawPlay"
import { WhyTable } from "./WhyTable"

/** Hands a table over as a file: its name without ending, and its text. */
export type SaveTable = (name: string, text: string) => void

/** What drawing does: the curve and its work, why the balance changes, and the line of pull. */
export default function DrawSheet({ onSave }: { onSave: SaveTable }) {
  const { state, problem, play, pause } = useDrawPlay(useBench())
  return (
    <div className="draw-sheet">
      <section>
        <h2 className="sheet-heading">{draw.play.heading}</h2>
        <div className="draw-play">
          <button type="button" onClick={state === "playing" ? pause : play}>
            {state === "playing" ? draw.play.pause : state === "paused" ? draw.play.goOn : draw.play.play}
          </button>
          <p className="draw-caution">{draw.dryFire}</p>
        </div>
        <Problem text={problem} />
      </section>
      <DrawPlot onSave={onSave} />
      <WhyTable />
      <LineOfPull />
    </div>
  )
}
