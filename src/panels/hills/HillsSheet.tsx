import "../sections.css"
import "../sheet.css"
import { FlattestHang } from "./FlattestHang"
import { HangWords } from "./HangWords"
import "./hills.css"
import { Motion } from "./Motion"
import { SlopePlot } from "./SlopePlot"

/** Hands a table over as a file: its name without ending, and its text. */
export type SaveTable = (name: string, text: string) => void

/** How the bow holds off the level: what hangs where, net lift against slope, a weight in motion, and the flattest hang. */
export default function HillsSheet({ onSave }: { onSave: SaveTable }) {
  return (
    <div className="hills-sheet">
      <HangWords />
      <SlopePlot onSave={onSave} />
      <Motion onSave={onSave} />
      <FlattestHang />
    </div>
  )
}
