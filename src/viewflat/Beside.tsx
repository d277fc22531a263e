import { HELD_POINT } from "../describe/compareText"
import type { Pane } from "../picture/handle"
import type { Evaluation } from "../scene/evaluate"
import type { Pose } from "../scene/schema"
import { partsApart } from "../state/samePart"
import "./beside.css"
import type { Draw } from "./shape"
import { shapesOf } from "./shapes"

/** Half the diagonal of the mark at the other setup's balance point, px. */
const MARK = 8

interface Props {
  readonly evaluation: Evaluation
  readonly other: Evaluation
  /** How the bow on the bench is held, whatever motion is shown of it. */
  readonly pose: Pose
  readonly draws: Readonly<Record<Pane, Draw>>
  readonly words: boolean
}

/** The setup beside the present one: outlines of the parts that are not where the present ones are, and its balance. */
export default function Beside({ evaluation, other, pose, draws, words }: Props) {
  const here = new Map(evaluation.now.parts.map((part) => [part.path, part]))
  const differing = partsApart(other.now, pose, here)
  const marks = [draws.side, draws.top].map((draw) => draw(other.now.centre))
  const [side] = marks
  return (
    <g className="flat-beside">
      {(["top", "side"] as const).map((pane) =>
        differing.flatMap((part) =>
          shapesOf(other.scene, other.now, part, draws[pane]).map(({ path }, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a part's shapes never change places
            <path key={`${pane} ${part.path} ${index}`} d={path} />
          )),
        ),
      )}
      {marks.map(({ x, y }, index) => (
        <path
          // biome-ignore lint/suspicious/noArrayIndexKey: one of the side, one from above
          key={index}
          className="flat-beside-mark"
          d={`M${x - MARK} ${y}L${x} ${y - MARK}L${x + MARK} ${y}L${x} ${y + MARK}Z`}
        />
      ))}
      {words && side !== undefined && (
        <text x={side.x} y={side.y + 26} textAnchor="middle">
          {HELD_POINT}
        </text>
      )}
    </g>
  )
}
