import type { ScreenPoint } from "../picture/drag"
import type { MomentArmPlace } from "./momentArm"

/** The balance point: a disc in quarters, so that it is known without its colour. */
export function BalanceMark({ at: { x, y } }: { at: ScreenPoint }) {
  return (
    <g className="flat-balance" transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`}>
      <circle className="flat-balance-ground" r="8" />
      <path d="M0 0V-8A8 8 0 0 1 8 0ZM0 0V8A8 8 0 0 1 -8 0Z" />
      <circle className="flat-balance-ring" r="8" />
    </g>
  )
}

interface Props {
  readonly balance: ScreenPoint
  readonly grip: ScreenPoint
  /** Where the plumb line ends, px. */
  readonly floor: number
  readonly place: MomentArmPlace
  readonly text: string
}

/** The plumb line from the balance point to the ground, and its arm to the grip as a dimension. */
export function MomentArm({ balance, grip, floor, place, text }: Props) {
  const { left, right, level } = place
  const tick = (x: number) => `M${(x - 4).toFixed(1)} ${(level + 4).toFixed(1)}l8 -8`
  const drop = (from: ScreenPoint, to: number) => `M${from.x.toFixed(1)} ${from.y.toFixed(1)}V${to.toFixed(1)}`
  return (
    <g className="flat-arm">
      <path className="flat-plumb" d={drop(balance, Math.max(floor, level))} />
      <path className="flat-witness" d={drop(grip, level + 9)} />
      <path d={`M${left.toFixed(1)} ${level.toFixed(1)}H${right.toFixed(1)}${tick(left)}${tick(right)}`} />
      <text className="flat-arm-text" x={place.text.x} y={place.text.y}>
        {text}
      </text>
    </g>
  )
}
