import { lazy, Suspense } from "react"
import { multiply, type Vec3 } from "../core/solids"
import { spanText } from "../describe/balanceText"
import { armLabel, BALANCE_TARGET } from "../describe/pictureWords"
import { isTilted } from "../describe/placeWords"
import type { Pane } from "../picture/handle"
import { hillTargetLabel } from "../describe/hillWords"
import { handlesOf } from "../picture/handles"
import { pullLine } from "../picture/pull"
import type { Evaluation } from "../scene/evaluate"
import type { Played } from "../state/played"
import type { Preferences } from "../state/preferences"
import { picture } from "../words/picture"
import { BalanceMark, MomentArm } from "./Balance"
import { bandOf } from "./band"
import { corners } from "./bodies"
import { contentsOf } from "./contents"
import { boxOf, flatten, type Frames, onPage, type Page } from "./frames"
import { Ground } from "./Ground"
import { BUTT, hillPoints, onHill } from "./hill"
import { around, type Box, type LabelWish, labelWidth, placeLabels } from "./labels"
import { placeMomentArm } from "./momentArm"
import { drawnBoxes, partWishes } from "./partLabels"
import { pathThrough } from "./outline"
import { type Draw, solid } from "./shape"
import { shapesOf } from "./shapes"

const Beside = lazy(() => import("./Beside"))
const FullDraw = lazy(() => import("./FullDraw"))
const LockedWeights = lazy(() => import("./LockedWeights"))
const Hillside = lazy(() => import("./Hillside"))

/** On pages smaller than this, px, parts are not named and the ground is not marked: the handles need the room. */
const ROOMY = { width: 560, height: 440 }
/** A handle keeps labels this far around its place, px: its knob may stand a little aside. */
const KNOB = 40
/** How near the ground line is under the lowest part, px. */
const GROUND_GAP = 20

/** What the balance of a drawn bow takes with its words, px. */
const DRAWN = { width: 400, height: 300 }

interface Props {
  readonly evaluation: Evaluation
  readonly played: Played | null
  /** The setup beside the present one. */
  readonly other: Evaluation | null
  readonly frames: Frames
  readonly page: Page
  readonly preferences: Preferences
  /** Paths of the parts to stand out. */
  readonly marked: readonly (string | null)[]
}

/** Everything that is drawn, once the page has a size. */
export function Drawing({ evaluation, played, other, frames, page, preferences, marked }: Props) {
  const { scene, now } = evaluation
  const { show } = preferences
  const contents = contentsOf(evaluation, played, other)
  const drawsOf = ({ rotation }: Evaluation["now"]) => ({
    side: drawing("side", frames, rotation),
    top: drawing("top", frames, rotation),
  })
  const draws = drawsOf(now)
  const band = show.target ? bandOf(scene.target) : null
  const grip = draws.side([0, 0, 0])
  const balance = draws.side(now.centre)
  const roomy = page.width >= ROOMY.width && page.height >= ROOMY.height
  const above = boxOf(frames.top, contents.top.extent, 0)
  const captionWidth = labelWidth(picture.above)
  const caption = { x: above.right, y: frames.top.y + 26 }
  // Under the side drawing, and under the one from above too where that reaches beside it.
  const beneath = boxOf(frames.side, contents.side.extent, GROUND_GAP).bottom
  const inTheWay = above.top < beneath && above.left < boxOf(frames.side, contents.side.extent, 0).right
  const level = inTheWay ? Math.max(beneath, above.bottom + 2 * GROUND_GAP) : beneath
  const { hill } = contents
  const floor = hill === null ? level : onPage(frames.side, onHill(hill, 0)).y
  // While a motion is played the handles are out of sight.
  const handles = played === null ? handlesOf(scene, evaluation, marked[1] ?? null) : []
  const knobs = handles.map((handle) => around(draws[handle.seen](handle.place(handle.value)), KNOB, KNOB))

  const pull = pullLine(scene, now.limbs)
  const centre = multiply(now.rotation, now.centre)
  const armText = armLabel(centre[0] * 1e3, centre[2] * 1e3, preferences, isTilted(now.pose))
  const arm = placeMomentArm(balance, grip, armText, knobs)

  const drawn = show.fullDraw && now.limbs.drawFraction > 0
  const room: Box = { left: 4, top: 4, right: page.width - 4, bottom: page.height - page.bottom }
  // Words keep off the figures over the corner and the words along the ground.
  const covered: Box[] = [
    { left: page.width - page.corner.width, right: page.width, top: 0, bottom: page.corner.height },
    boxOf({ ...frames.side, y: floor }, { across: contents.side.extent.across, up: [0, 0] }, GROUND_GAP),
  ]
  const labels = () => {
    const wishes: LabelWish[] = []
    if (band !== null && scene.target.forwardMm !== undefined) {
      const top = Math.min(...corners(band.centre, band.size).map((corner) => draws.side(corner).y))
      const text = `${BALANCE_TARGET} ${spanText(scene.target.forwardMm, "length", preferences)}`
      wishes.push({ id: "target", text, at: { x: draws.side(band.centre).x, y: top + 8 } })
    }
    if (show.ground && hill !== null) {
      const top = onPage(frames.side, onHill(hill, hill.target, BUTT.above + BUTT.half))
      wishes.push({ id: "hill-target", text: hillTargetLabel(hill.slopeDeg), at: { x: top.x, y: top.y - 6 } })
    }
    wishes.push(...partWishes(evaluation, draws, preferences))
    const taken: Box[] = [
      ...covered,
      ...knobs,
      ...drawnBoxes(evaluation, draws),
      around(balance, 24, 24),
      around(grip, 16, 16),
      around({ x: caption.x - captionWidth / 2, y: caption.y - 4 }, captionWidth + 8, 16),
    ]
    // The ground's line, with its marks and words.
    if (show.ground && hill === null) taken.push({ left: 0, right: page.width, top: floor - 16, bottom: floor + 26 })
    if (hill !== null) taken.push(...hillPoints(hill).map((point) => around(onPage(frames.side, point), 14, 22)))
    if (show.plumb) {
      taken.push(...arm.boxes, { left: balance.x - 4, right: balance.x + 4, top: balance.y, bottom: floor })
    }
    // The drawn balance says what it shows by itself, around the balance point.
    if (drawn) taken.push(around(balance, DRAWN.width, DRAWN.height))
    return placeLabels(wishes, taken, room)
  }

  return (
    <>
      <CentreLine frames={frames} left={above.left - 14} right={above.right + 14} />
      {pull !== null && <path className="flat-pull" d={pathThrough(pull.map(draws.side), false)} />}
      {show.ground && hill !== null && (
        <Suspense fallback={null}>
          <Hillside frame={frames.side} hill={hill} />
        </Suspense>
      )}
      {(["top", "side"] as const).map((pane) => (
        <g key={pane}>
          {inDepth(evaluation, pane).map((part) => (
            <g
              key={part.path}
              data-part={part.path}
              className={marked.includes(part.path) ? "flat-part flat-marked" : "flat-part"}
            >
              {shapesOf(scene, now, part, draws[pane]).map(({ look, path }, index) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a part's shapes never change places
                <path key={index} className={look} d={path} />
              ))}
            </g>
          ))}
          {band !== null && (
            <path className="flat-band" d={solid("", corners(band.centre, band.size), draws[pane]).path} />
          )}
        </g>
      ))}
      {other !== null && (
        <Suspense fallback={null}>
          <Beside
            evaluation={evaluation}
            other={other}
            pose={(played?.of ?? evaluation).now.pose}
            draws={played === null ? drawsOf(other.now) : draws}
            words={show.labels && roomy}
          />
        </Suspense>
      )}
      {show.ground && roomy && hill === null && (
        <Ground frame={frames.side} extent={contents.side.extent} floor={floor} units={preferences} />
      )}
      {show.plumb && <MomentArm balance={balance} grip={grip} floor={floor} place={arm} text={armText} />}
      {played !== null && (
        <Suspense fallback={null}>
          <LockedWeights
            evaluation={evaluation}
            played={played}
            draw={draws.side}
            grip={grip}
            words={show.labels && roomy}
          />
        </Suspense>
      )}
      {drawn && (
        <Suspense fallback={null}>
          <FullDraw
            evaluation={evaluation}
            frame={frames.side}
            level={arm.level}
            preferences={preferences}
            taken={[...covered, ...knobs, ...arm.boxes]}
            room={room}
            roomy={roomy}
          />
        </Suspense>
      )}
      <circle className="flat-pivot" cx={grip.x} cy={grip.y} r="3.5" />
      <BalanceMark at={balance} />
      <BalanceMark at={draws.top(now.centre)} />
      {roomy && (
        <text className="flat-caption" textAnchor="end" {...caption}>
          {picture.above}
        </text>
      )}
      {show.labels &&
        roomy &&
        labels().map(({ id, text, x, y }) => (
          <text key={id} className="flat-label" x={x} y={y + 4} textAnchor="middle">
            {text}
          </text>
        ))}
    </>
  )
}

function drawing(pane: Pane, frames: Frames, rotation: Evaluation["now"]["rotation"]): Draw {
  return (point: Vec3) => onPage(frames[pane], flatten[pane](multiply(rotation, point)))
}

/** Parts from the furthest to the nearest. */
function inDepth({ now }: Evaluation, pane: Pane) {
  const axis = pane === "side" ? 2 : 1
  const nearness = new Map(now.parts.map((part) => [part, multiply(now.rotation, part.centre)[axis]]))
  return [...now.parts].sort((a, b) => nearness.get(a)! - nearness.get(b)!)
}

/** The bow's middle plane from above: a dash-dotted line through the grip. */
function CentreLine({ frames, left, right }: { frames: Frames; left: number; right: number }) {
  return <path className="flat-centre-line" d={`M${left.toFixed(1)} ${frames.top.y.toFixed(1)}H${right.toFixed(1)}`} />
}
