import type { Pane } from "../picture/handle"
import type { Evaluation } from "../scene/evaluate"
import "./compared.css"
import { shapesOf } from "./shapes"
import type { Draw } from "./shape"

/** The rig of another setup, drawn through the present one. */
export default function Compared({ compared, draws }: { compared: Evaluation; draws: Readonly<Record<Pane, Draw>> }) {
  const { scene, now } = compared
  const rig = now.parts.filter(({ address }) => address[0] === "rig")
  return (
    <g className="flat-compared">
      {(["top", "side"] as const).map((pane) => (
        <path
          key={pane}
          d={rig.flatMap((part) => shapesOf(scene, now, part, draws[pane]).map(({ path }) => path)).join("")}
        />
      ))}
    </g>
  )
}
