import { useRef } from "react"
import { multiply } from "../../core/solids"
import type { CardGroup } from "../../describe/cardParts"
import type { Evaluation } from "../../scene/evaluate"
import type { Preferences } from "../../state/preferences"
import { contentsOf } from "../../viewflat/contents"
import { Drawing } from "../../viewflat/Drawing"
import { arrangeFrames, boxOf, flatten, type Frames, onPage, type Page, type Size } from "../../viewflat/frames"
import { around, type Box, type LabelWish, placeLabels } from "../../viewflat/labels"
import { drawnBoxes } from "../../viewflat/partLabels"
import type { Draw } from "../../viewflat/shape"
import { useSize } from "../../viewflat/useSize"
import { setupCard } from "../../words/setupCard"
import { Dimensions, placeDimensions } from "./Dimensions"
import { dimensionsOf } from "./dimensions"

/** What the code takes of the sheet's top right corner, with the margins, CSS px. */
const CODE = { width: 140, bottom: 190 }

/** `top` is where the drawing begins on the sheet, px: the code may reach into its corner. */
const pageOf = ({ width, height }: Size, top: number): Page => ({
  width,
  height,
  corner: { width: CODE.width, height: Math.max(0, CODE.bottom - top) },
  bottom: 10,
  edge: 26,
  arm: { width: 150, height: 70 },
})

/** Radius of the ring around a part's number, px, and the characters that take as much room. */
const RING = 8
const WIDE = 3

interface Props {
  readonly evaluation: Evaluation
  readonly groups: readonly CardGroup[]
  readonly preferences: Preferences
}

/** The bow from the right and from above with its lengths, its balance point and the numbers of the parts list. */
export function CardDrawing({ evaluation, groups, preferences }: Props) {
  const host = useRef<HTMLDivElement>(null)
  const size = useSize(host)
  const page = size && pageOf(size, host.current?.offsetTop ?? 0)
  const contents = contentsOf(evaluation, null, null, false)
  const frames = page && arrangeFrames(page, contents.side, contents.top)
  const { show } = preferences
  const shown: Preferences = {
    ...preferences,
    show: { ...show, plumb: true, target: true, ground: false, labels: false, fullDraw: false },
  }
  return (
    <div className="card-drawing" ref={host}>
      {page !== null && frames !== null && (
        <svg role="img" aria-label={setupCard.drawing} viewBox={`0 0 ${page.width} ${page.height}`}>
          <defs>
            <pattern id="card-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <path className="flat-hatching" d="M0 0V7" />
            </pattern>
          </defs>
          <Drawing
            evaluation={evaluation}
            played={null}
            other={null}
            frames={frames}
            page={page}
            preferences={shown}
            marked={[]}
          />
          <Marks {...{ evaluation, groups, preferences, frames, page }} />
          <Captions
            side={boxOf(frames.side, contents.side.extent, 0)}
            top={boxOf(frames.top, contents.top.extent, 0)}
          />
        </svg>
      )}
    </div>
  )
}

/** Which drawing is which: one over its top, the other under its foot, both clear of what the drawings hold. */
const Captions = ({ side, top }: { side: Box; top: Box }) => (
  <>
    <text className="card-caption" x={side.left} y={Math.max(12, side.top - 12)}>
      {setupCard.fromRight}
    </text>
    <text className="card-caption" textAnchor="end" x={top.right} y={top.bottom + 16}>
      {setupCard.fromAbove}
    </text>
  </>
)

/** Lengths, and each part's number in a ring where there is room for it, with a line to the part. */
function Marks({ evaluation, groups, preferences, frames, page }: Props & { frames: Frames; page: Page }) {
  const { rotation, parts } = evaluation.now
  const drawing =
    (pane: "side" | "top"): Draw =>
    (point) =>
      onPage(frames[pane], flatten[pane](multiply(rotation, point)))
  const draws = { side: drawing("side"), top: drawing("top") }
  const placed = placeDimensions(dimensionsOf(evaluation, preferences), draws)
  const wishes = groups.flatMap(({ rows }) =>
    rows.flatMap(({ number, paths }): LabelWish[] => {
      const part = parts.find(({ path }) => path === paths[0])
      if (part === undefined) return []
      const pane = /\/(left|right)\//.test(part.path) ? "top" : "side"
      return [{ id: part.path, text: String(number).padStart(WIDE), at: draws[pane](part.centre) }]
    }),
  )
  const balance = draws.side(evaluation.now.centre)
  const taken = [
    ...drawnBoxes(evaluation, draws),
    ...placed.map(({ box }) => box),
    around(balance, 26, 26),
    // The plumb line, and the moment arm with its number.
    { left: balance.x - RING, right: balance.x + RING, top: balance.y, bottom: page.height },
    around({ x: draws.side([0, 0, 0]).x + 50, y: balance.y + 54 }, 190, 22),
  ]
  const room = { left: 2, top: 2, right: page.width - 2, bottom: page.height - 2 }
  return (
    <>
      <Dimensions placed={placed} />
      {placeLabels(wishes, taken, room).map(({ id, text, at, x, y }) => {
        const away = Math.hypot(at.x - x, at.y - y) || 1
        const [fromX, fromY] = [x + ((at.x - x) / away) * RING, y + ((at.y - y) / away) * RING]
        return (
          <g key={id} className="card-number">
            <path d={`M${fromX.toFixed(1)} ${fromY.toFixed(1)}L${at.x.toFixed(1)} ${at.y.toFixed(1)}`} />
            <circle cx={x} cy={y} r={RING} />
            <text x={x} y={y + 3.5} textAnchor="middle">
              {text.trim()}
            </text>
          </g>
        )
      })}
    </>
  )
}
