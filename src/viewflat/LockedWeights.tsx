import { along } from "../core/solids"
import { LOCKED, motionLabel } from "../describe/hillWords"
import type { ScreenPoint } from "../picture/drag"
import type { Evaluation } from "../scene/evaluate"
import type { Played } from "../state/played"
import { cylinder } from "./bodies"
import { labelWidth } from "./labels"
import "./lockedWeights.css"
import { pathThrough } from "./outline"
import { type Draw, solid } from "./shape"

/** Words end no nearer to the page's left edge than they are long and this, px. */
const EDGE = 4

interface Props {
  readonly evaluation: Evaluation
  readonly played: Played
  /** Of the side drawing. */
  readonly draw: Draw
  readonly grip: ScreenPoint
  readonly words: boolean
}

/** While a motion is played: the swing weights as if they were locked in their joints, dashed. */
export default function LockedWeights({ evaluation, played, draw, grip, words }: Props) {
  const ghosts = played.locked.flatMap(({ path, direction }) => {
    const hung = evaluation.now.parts.find((part) => part.path === path)?.hung
    if (hung === undefined) return []
    const { hinge, weight } = hung
    const end = along(hinge, direction, weight.stemLength)
    const top = along(end, direction, -weight.bobLength)
    const bob = solid("", cylinder(top, direction, weight.bobLength, weight.bobRadius), draw)
    return [{ path, stem: pathThrough([hinge, top].map(draw), false), bob: bob.path, end: draw(end) }]
  })
  // Named at the one furthest back, where the moment arm's number never is.
  const first = ghosts.reduce((a, b) => (b.end.x < a.end.x ? b : a), ghosts[0]!)
  const motion = motionLabel(evaluation.now.pose.slopeDeg)
  const endOf = (text: string, x: number) => Math.max(x, labelWidth(text) + EDGE)
  return (
    <g className="flat-locked">
      {ghosts.map(({ path, stem, bob }) => (
        <path key={path} d={stem + bob} />
      ))}
      {words && ghosts.length > 0 && (
        <>
          <text className="flat-label" x={endOf(LOCKED, first.end.x - 14)} y={first.end.y + 8} textAnchor="end">
            {LOCKED}
          </text>
          <text className="flat-label" x={endOf(motion, grip.x - 16)} y={grip.y - 16} textAnchor="end">
            {motion}
          </text>
        </>
      )}
    </g>
  )
}
