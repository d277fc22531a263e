import type { UnitChoice } from "../describe/format"
import { picture } from "../words/picture"
import type { Extent, Frame } from "./frames"
import { ticks } from "./ruler"

/** A tick's label needs this much, px. */
const LEAST = 64

/** A level line under the side drawing, marked with distances from the grip, and which way the target is. */
export function Ground(props: { frame: Frame; extent: Extent; floor: number; units: UnitChoice }) {
  const { frame, extent, floor, units } = props
  const [from, to] = extent.across
  const [left, right] = [frame.x + from * frame.scale - 12, frame.x + to * frame.scale + 12]
  return (
    <g className="flat-ground">
      <path d={`M${left.toFixed(1)} ${floor.toFixed(1)}H${right.toFixed(1)}l-7 -4m7 4l-7 4`} />
      {ticks(from, to, frame.scale, LEAST, units).map(({ at, text }) => {
        const x = frame.x + at * frame.scale
        return (
          <g key={text}>
            <path d={`M${x.toFixed(1)} ${floor.toFixed(1)}v6`} />
            <text x={x} y={floor + 18} textAnchor="middle">
              {text}
            </text>
          </g>
        )
      })}
      <text x={right} y={floor - 8} textAnchor="end">
        {picture.toTarget}
      </text>
    </g>
  )
}
