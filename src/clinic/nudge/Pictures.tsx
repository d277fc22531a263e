import { useEffect, useMemo, useRef } from "react"
import { DROP_DECIMALS, enlargedText, turnText } from "../../describe/nudgeText"
import { anglesAt, type Motion, motions } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import { bowLines, type BowLine, type Box, clockwise, enlargement, room, seen } from "./bowLines"
import type { Clock } from "./clock"
import type { Watched } from "./watched"

interface Props {
  readonly bows: readonly Watched[]
  /** Seen first and largest; the others small, and not at all of a drop. */
  readonly motion: Motion
  readonly alone: boolean
  readonly clock: Clock
}

/** The bows side by side, turning with the clock; each from where the turn is seen best, and small from the other sides. */
export function Pictures({ bows, motion, alone, clock }: Props) {
  const factor = useMemo(() => enlargement(largest(bows)), [bows])
  const drawn = useMemo(() => bows.map(({ evaluation, balance }) => bowLines(evaluation.scene, balance)), [bows])
  const boxes = useMemo(() => {
    const all = drawn.flat()
    const turn = factor * largest(bows)
    return { pitch: room(all, "pitch", turn), yaw: room(all, "yaw", turn), roll: room(all, "roll", turn) }
  }, [drawn, bows, factor])
  const rest = alone ? [] : motions.filter((other) => other !== motion).reverse()
  const picture = (bow: Watched, index: number, view: Motion) => (
    <Picture
      key={view}
      bow={bow}
      lines={drawn[index]!}
      view={view}
      box={boxes[view]}
      factor={factor}
      decimals={alone ? DROP_DECIMALS : undefined}
      clock={clock}
    />
  )
  return (
    <>
      <div className="nudge-pictures" data-count={bows.length}>
        {bows.map((bow, index) => (
          <div key={bow.which} className="nudge-bow" data-bow={bow.which}>
            <h3>
              <span className="nudge-mark" aria-hidden="true" />
              {bow.name}
            </h3>
            {picture(bow, index, motion)}
            {rest.length > 0 && <div className="nudge-small">{rest.map((view) => picture(bow, index, view))}</div>}
          </div>
        ))}
      </div>
      <p className="hills-note">{enlargedText(factor, bows.length)}</p>
    </>
  )
}

function largest(bows: readonly Watched[]): number {
  let most = 0
  for (const { trace } of bows) {
    for (const angles of trace.angles) {
      for (const angle of angles) most = Math.max(most, Math.abs(angle))
    }
  }
  return most
}

interface PictureProps {
  readonly bow: Watched
  readonly lines: readonly BowLine[]
  readonly view: Motion
  readonly box: Box
  readonly factor: number
  readonly decimals: number | undefined
  readonly clock: Clock
}

function Picture({ bow: { trace }, lines, view, box, factor, decimals, clock }: PictureProps) {
  const turning = useRef<SVGGElement>(null)
  const words = useRef<HTMLSpanElement>(null)
  useEffect(() => {
    const axis = motions.indexOf(view)
    return clock.watch((time) => {
      const angle = anglesAt(trace, time)[axis]!
      turning.current?.setAttribute("transform", `rotate(${(factor * clockwise(view, angle)).toFixed(3)})`)
      if (words.current !== null) words.current.textContent = turnText(angle, view, decimals)
    })
  }, [clock, trace, view, factor, decimals])
  return (
    <figure className="nudge-picture" data-view={view}>
      <svg viewBox={`${box.left} ${box.top} ${box.width} ${box.height}`} aria-hidden="true">
        <g className="nudge-still">{strokes(lines, view)}</g>
        <g ref={turning}>{strokes(lines, view)}</g>
        <circle className="nudge-grip" r={0.018} />
      </svg>
      <figcaption>
        {nudge.motions[view]} <span className="nudge-angle" ref={words} />
        <span className="nudge-view">{nudge.views[view]}</span>
      </figcaption>
    </figure>
  )
}

const strokes = (lines: readonly BowLine[], view: Motion) =>
  lines.map(({ look, points, width }, index) => (
    <polyline
      // biome-ignore lint/suspicious/noArrayIndexKey: a bow's lines never change places
      key={index}
      className={`nudge-${look}`}
      strokeWidth={width}
      points={points
        .map((point) =>
          seen[view](point)
            .map((value) => value.toFixed(4))
            .join(),
        )
        .join(" ")}
    />
  ))
