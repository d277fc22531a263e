import type { ScreenPoint } from "../../picture/drag"
import type { Pane } from "../../picture/handle"
import type { Box } from "../../viewflat/labels"
import { around } from "../../viewflat/labels"
import type { Draw } from "../../viewflat/shape"
import type { Dimension } from "./dimensions"

/** How far a dimension's line stands off what it measures, its ticks' half length and its text, px. */
const OFF = 15
const TICK = 3.5
const TEXT = { gap: 4, half: 6, character: 6.2 }

export interface PlacedDimension extends Dimension {
  readonly a: ScreenPoint
  readonly b: ScreenPoint
  readonly witnesses: readonly (readonly [ScreenPoint, ScreenPoint])[]
  readonly at: ScreenPoint
  readonly box: Box
}

/** Where dimensions stand on the page; those whose length is seen end on are left out. */
export function placeDimensions(
  all: readonly Dimension[],
  draws: Readonly<Record<Pane, Draw>>,
): readonly PlacedDimension[] {
  return all.flatMap((dimension): PlacedDimension[] => {
    const [from, to] = [draws[dimension.pane](dimension.from), draws[dimension.pane](dimension.to)]
    const span = Math.hypot(to.x - from.x, to.y - from.y)
    if (span < 4 * TICK) return []
    // On the page y runs down: this is to the left of the way from `from` to `to`.
    const normal = { x: ((to.y - from.y) / span) * dimension.side, y: (-(to.x - from.x) / span) * dimension.side }
    const moved = ({ x, y }: ScreenPoint, by: number) => ({ x: x + normal.x * by, y: y + normal.y * by })
    const width = dimension.text.length * TEXT.character
    const aside = OFF + TEXT.gap + TEXT.half * Math.abs(normal.y) + (width / 2) * Math.abs(normal.x)
    const at = moved({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, aside)
    return [
      {
        ...dimension,
        a: moved(from, OFF),
        b: moved(to, OFF),
        witnesses: [from, to].map((end) => [moved(end, 5), moved(end, OFF + TICK)] as const),
        at,
        box: around(at, width + 2 * TEXT.gap, 2 * TEXT.half),
      },
    ]
  })
}

/** Lengths with their lines and ticks. */
export function Dimensions({ placed }: { placed: readonly PlacedDimension[] }) {
  const point = ({ x, y }: ScreenPoint) => `${x.toFixed(1)} ${y.toFixed(1)}`
  const tick = ({ x, y }: ScreenPoint) => `M${(x - TICK).toFixed(1)} ${(y + TICK).toFixed(1)}l${2 * TICK} ${-2 * TICK}`
  return placed.map(({ key, a, b, witnesses, at, text }) => (
    <g key={key} className="card-dimension">
      <path d={`M${point(a)}L${point(b)}${tick(a)}${tick(b)}`} />
      <path className="card-witness" d={witnesses.map(([from, to]) => `M${point(from)}L${point(to)}`).join("")} />
      <text x={at.x} y={at.y + 4} textAnchor="middle">
        {text}
      </text>
    </g>
  ))
}
