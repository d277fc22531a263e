import { type Ref, useImperativeHandle, useRef } from "react"
import type { SwingWeight } from "../../core/swing"
import { hills } from "../../words/hills"

export interface PictureRun {
  /** The bow's slope and the weight's angle in the bow's frame, positive forward, rad. */
  show(slope: number, inBow: number): void
}

interface Props {
  readonly weight: SwingWeight
  /** Where the locked weight stands in the bow's frame, rad. */
  readonly locked: number
  readonly slope: number
  readonly inBow: number
  readonly ref?: Ref<PictureRun>
}

/** Longest angle of a stop that is drawn: one farther out is never met on a slope. */
const STOP_DRAWN = Math.PI / 2

/**
 * The joint seen from the archer's right, kept in the middle: the bow turns about it, the plumb line does not. Lengths
 * are in stem lengths, so that a short weight is as plain as a long one.
 */
export function MotionPicture({ weight, locked, slope, inBow, ref }: Props) {
  const bow = useRef<SVGGElement>(null)
  const stem = useRef<SVGGElement>(null)
  useImperativeHandle(ref, () => ({
    show(slopeNow, angle) {
      bow.current?.setAttribute("transform", turn(slopeNow))
      stem.current?.setAttribute("transform", turn(angle))
    },
  }))
  const radius = Math.min(0.4, Math.max(0.05, weight.bobRadius / weight.stemLength))
  const length = Math.min(1, Math.max(0.08, weight.bobLength / weight.stemLength))
  const bob = <rect x={-radius} y={1 - length} width={2 * radius} height={length} />
  return (
    <svg className="motion-picture" viewBox="-2.3 -0.75 4.6 2.1" aria-hidden="true">
      <line className="motion-plumb" x1={0} y1={0} x2={0} y2={1.3} />
      <text className="motion-plumb-word" x={0.06} y={1.3}>
        {hills.motion.plumb}
      </text>
      <text x={2.2} y={-0.55} textAnchor="end">
        {hills.motion.toTarget}
      </text>
      <g ref={bow} transform={turn(slope)}>
        <line className="motion-bow" x1={-2} y1={0} x2={2} y2={0} />
        <line className="motion-down" x1={0} y1={-0.6} x2={0} y2={1.2} />
        {weight.stop < STOP_DRAWN &&
          [-1, 1].map((side) => (
            <line key={side} className="motion-stop" y1={0.2} y2={0.7} transform={turn(side * weight.stop)} />
          ))}
        <g className="motion-locked" transform={turn(locked)}>
          <line y2={1} />
          {bob}
        </g>
        <g ref={stem} className="motion-free" transform={turn(inBow)}>
          <line y2={1} />
          {bob}
        </g>
        <circle className="motion-joint" r={0.05} />
      </g>
    </svg>
  )
}

/** SVG turns clockwise with y down; slope and forward angle are counter-clockwise as seen from the archer's right. */
const turn = (angle: number): string => `rotate(${((-angle * 180) / Math.PI).toFixed(3)})`
