import { useEffect, useMemo, useRef } from "react"
import { type Landing, landing } from "../../core/nudge"
import { faceText } from "../../describe/nudgeText"
import { anglesAt, landingOf } from "../../scene/nudge"
import { type Distance, faces } from "./asked"
import type { Clock } from "./clock"
import type { Watched } from "./watched"

/** Rings of a face. */
const RINGS = Array.from({ length: 10 }, (_, index) => 10 - index)
/** What is seen around the face, of its radius. */
const AROUND = 1.3
const ZOOMS = [16, 8, 4, 2]
/** The hits of a face seen nearer lie within this part of what is seen. */
const WITHIN = 0.6

interface FaceProps {
  readonly bows: readonly Watched[]
  readonly clock: Clock
  readonly distance: Distance
  readonly leavesS: number
}

/** Everything in radii of the face, so much nearer that hits close to each other are told apart. */
export function Face({ bows, clock, distance, leavesS }: FaceProps) {
  const radius = faces[distance] / 200
  const away = Number(distance)
  const far = Math.max(
    ...bows.map(({ trace }) => {
      const { right, up } = landingOf(trace, leavesS, away)
      return Math.max(Math.abs(right), Math.abs(up)) / radius
    }),
  )
  const zoom = ZOOMS.find((each) => far <= (WITHIN * AROUND) / each) ?? 1
  const half = AROUND / zoom
  return (
    <figure className="nudge-face">
      <svg viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`} aria-hidden="true">
        {RINGS.map((ring) => (
          <circle key={ring} className="nudge-ring" data-ring={ring} r={ring / 10} strokeWidth={0.006 * half} />
        ))}
        <path
          className="nudge-aim"
          strokeWidth={0.01 * half}
          d={`M${-0.04 * half} 0H${0.04 * half}M0 ${-0.04 * half}V${0.04 * half}`}
        />
        {/* The held one's hollow mark under the present one's smaller disc: hits in one place both show. */}
        {[...bows].reverse().map((bow) => (
          <Arrow key={bow.which} bow={bow} clock={clock} away={away} radius={radius} half={half} leavesS={leavesS} />
        ))}
      </svg>
      <figcaption className="hills-note">{faceText(faces[distance], zoom)}</figcaption>
    </figure>
  )
}

interface ArrowProps extends Omit<FaceProps, "bows" | "distance"> {
  readonly bow: Watched
  /** Of the target, m, and its face's radius. */
  readonly away: number
  readonly radius: number
  /** Half of what is seen, in radii. */
  readonly half: number
}

/** Pieces of the trail. */
const TRAIL = 40

/** The way the bow points until the arrow leaves, where the arrow would be, and, moving, where the bow points now. */
function Arrow({ bow: { which, trace }, clock, away, radius, half, leavesS }: ArrowProps) {
  const pointing = useRef<SVGCircleElement>(null)
  const trail = useMemo(() => {
    const times = Array.from({ length: TRAIL + 1 }, (_, index) => (leavesS * index) / TRAIL)
    return times.map((time) => onFace(landingOf(trace, time, away), radius))
  }, [trace, leavesS, away, radius])
  useEffect(
    () =>
      clock.watch((time) => {
        const [x, y] = onFace(landing(anglesAt(trace, time), away), radius)
        pointing.current?.setAttribute("cx", String(x))
        pointing.current?.setAttribute("cy", String(y))
      }),
    [clock, trace, away, radius],
  )
  const mark = 0.05 * half
  const end = trail.at(-1)!
  // A hit that would be out of sight stands at the edge, hollow, in its direction.
  const edge = half - 1.5 * mark
  const out = Math.max(Math.abs(end[0]), Math.abs(end[1]))
  const [x, y] = out > edge ? [(end[0] * edge) / out, (end[1] * edge) / out] : end
  return (
    <g className="nudge-arrow-mark" data-bow={which} data-off={out > edge || undefined} strokeWidth={0.012 * half}>
      <polyline points={trail.map((point) => point.join()).join(" ")} />
      <circle ref={pointing} className="nudge-pointing" r={0.6 * mark} />
      {which === "now" ? (
        <circle className="nudge-hit" cx={x} cy={y} r={0.55 * mark} />
      ) : (
        <path className="nudge-hit" d={`M${x - mark} ${y}L${x} ${y - mark}L${x + mark} ${y}L${x} ${y + mark}Z`} />
      )}
    </g>
  )
}

const onFace = ({ right, up }: Landing, radius: number): readonly [number, number] => [right / radius, 0 - up / radius]
