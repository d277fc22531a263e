import { TERRACE } from "../picture/hill"
import { type Frame, onPage } from "./frames"
import { BUTT, type FlatHill, onHill } from "./hill"
import "./hillside.css"
import { pathThrough } from "./outline"

/** How deep the cut through the ground is drawn, px. */
const DEPTH = 16
/** The level line that the slope is seen against, m. */
const LEVEL = 0.28

/** The cut through a hillside under the side drawing, level where the archer stands, and the target on it. */
export default function Hillside({ frame, hill }: { readonly frame: Frame; readonly hill: FlatHill }) {
  const at = (forward: number, above = 0) => onPage(frame, onHill(hill, forward, above))
  const profile = [hill.from, -TERRACE, TERRACE, hill.to].map((x) => at(x))
  const foot = [...profile].reverse().map(({ x, y }) => ({ x, y: y + DEPTH }))
  const edge = at(TERRACE)
  const back = hill.target + BUTT.thick
  const { x, y } = at(hill.target, BUTT.above + BUTT.half)
  const [width, height] = [BUTT.thick * frame.scale, 2 * BUTT.half * frame.scale]
  return (
    <g className="flat-hill">
      <path className="flat-hill-cut" d={pathThrough([...profile, ...foot], true)} />
      <path className="flat-hill-top" d={pathThrough(profile, false)} />
      <path
        className="flat-hill-level"
        d={`M${edge.x.toFixed(1)} ${edge.y.toFixed(1)}h${(LEVEL * frame.scale).toFixed(1)}`}
      />
      <path className="flat-hill-leg" d={pathThrough([at(back, BUTT.above), at(back + BUTT.thick)], false)} />
      <path className="flat-hill-leg" d={pathThrough([at(hill.target, BUTT.above), at(hill.target)], false)} />
      <rect className="flat-hill-target" x={x} y={y} width={width} height={height} />
    </g>
  )
}
