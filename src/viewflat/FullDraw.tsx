import type { Vec3 } from "../core/solids"
import { drawnWords, sketchedForce } from "../describe/drawnWords"
import { drawnPlaces } from "../picture/drawnPlaces"
import type { ScreenPoint } from "../picture/drag"
import type { Evaluation } from "../scene/evaluate"
import { heldDrawn } from "../scene/heldDrawn"
import type { Preferences } from "../state/preferences"
import { type Frame, flatten, onPage } from "./frames"
import "./fullDraw.css"
import { type Box, placeLabels } from "./labels"

const HEAD = { length: 16, half: 6 }
const DIAMOND = 7
/** The gap is drawn this far under the moment arm, px. */
const UNDER = 22
/** Half the length of the mark in the grip, px. */
const PRESS = 10

interface Props {
  readonly evaluation: Evaluation
  readonly frame: Frame
  /** Where the moment arm's line is, px down the page. */
  readonly level: number
  readonly preferences: Preferences
  /** What words must keep off, and inside what, px. */
  readonly taken: readonly Box[]
  readonly room: Box
  /** Whether there is room for all the words; the net is said in any case, if it finds a place. */
  readonly roomy: boolean
}

/** The balance of a drawn bow in the side drawing; the same as the 3D picture shows. Nothing at brace. */
export default function FullDraw({ evaluation, frame, level, preferences, taken, room, roomy }: Props) {
  const drawn = heldDrawn(evaluation)
  if (drawn === null) return null
  const { scene, now } = evaluation
  const places = drawnPlaces(now, drawn)
  const at = (place: Vec3) => onPage(frame, flatten.side(place))
  const [balance, balanced] = [at(places.balance), at(places.balanced)]
  const [weightEnd, liftEnd] = [at(places.weightEnd), at(places.liftEnd)]
  const words = drawnWords(drawn, now.armForward, sketchedForce(scene.bow.kind, now.limbs.drawFraction), preferences)
  const row = level + UNDER
  const [left, right] = [Math.min(balance.x, balanced.x), Math.max(balance.x, balanced.x)]
  const pressure = places.pressure === null ? null : at(places.pressure)
  const grip = at([0, 0, 0])
  const wishes = [
    { id: roomy ? "gap" : "net", at: { x: (left + right) / 2, y: row } },
    { id: "lift", at: liftEnd },
    { id: "weight", at: weightEnd },
    { id: "hand", at: pressure ?? grip },
  ] as const
  const shown = preferences.show.labels ? wishes.filter(({ id }) => (roomy || id === "net") && words[id] !== "") : []
  const arrows = [
    { left: balance.x - 8, right: balance.x + 8, top: balance.y - 10, bottom: weightEnd.y },
    { left: balanced.x - 8, right: balanced.x + 8, top: liftEnd.y, bottom: balanced.y + 8 },
    { left: left - 4, right: right + 4, top: row - 7, bottom: row + 7 },
  ]
  const labels = placeLabels(
    shown.map(({ id, at: place }) => ({ id, text: words[id], at: place })),
    [...taken, ...arrows],
    room,
  )
  return (
    <g className="flat-drawn">
      <path className="flat-drawn-witness" d={`M${n(balanced.x)} ${n(balanced.y)}V${n(row + 6)}`} />
      <path d={`M${n(left)} ${n(row)}H${n(right)}M${n(left)} ${n(row - 6)}v12M${n(right)} ${n(row - 6)}v12`} />
      <Arrow from={balance} to={weightEnd} />
      {!places.beyond && <Arrow from={balanced} to={liftEnd} />}
      <path
        visibility={places.beyond ? "hidden" : undefined}
        className="flat-drawn-balanced"
        d={`M${n(balanced.x)} ${n(balanced.y - DIAMOND)}l${DIAMOND} ${DIAMOND}l${-DIAMOND} ${DIAMOND}l${-DIAMOND} ${-DIAMOND}Z`}
      />
      {pressure !== null && (
        <path
          className="flat-drawn-hand"
          d={`M${n(grip.x)} ${n(grip.y)}L${n(pressure.x)} ${n(pressure.y)}m${-PRESS} 0h${2 * PRESS}`}
        />
      )}
      {labels.map(({ id, text, x, y }) => (
        <text className="flat-label" key={id} x={x} y={y + 4} textAnchor="middle">
          {text}
        </text>
      ))}
    </g>
  )
}

function Arrow({ from, to }: { readonly from: ScreenPoint; readonly to: ScreenPoint }) {
  const way = Math.sign(to.y - from.y)
  const neck = to.y - way * HEAD.length
  return (
    <path
      className="flat-drawn-arrow"
      d={`M${n(from.x - 1.5)} ${n(from.y)}h3V${n(neck)}h${HEAD.half - 1.5}L${n(to.x)} ${n(to.y)}L${n(to.x - HEAD.half)} ${n(neck)}h${HEAD.half - 1.5}Z`}
    />
  )
}

const n = (pixels: number): string => pixels.toFixed(1)
