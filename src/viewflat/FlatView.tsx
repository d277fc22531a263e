import { lazy, type PointerEvent, Suspense, useEffect, useId, useLayoutEffect, useRef, useState } from "react"
import { hover, select } from "../commands/bench"
import { buttonsBox, figuresPlace, STACKED } from "../picture/figuresPlace"
import type { Projector } from "../picture/projector"
import type { Pose } from "../scene/schema"
import { beside } from "../state/compared"
import { pictured, playedNow } from "../state/played"
import { givePoint } from "../state/picking"
import { useBench, useLive, usePreferences } from "../state/useBench"
import { picture } from "../words/picture"
import { Drawing } from "./Drawing"
import "./flat.css"
import type { Page, Size } from "./frames"
import { createFraming } from "./framing"
import { createFlatProjector } from "./projector"
import { useSize } from "./useSize"

const InWords = lazy(() => import("./InWords"))

/** Along the bottom are buttons, the notice that there is no 3D, or on a bare drawing the ground with its distances. */
function pageOf({ width, height }: Size, bare: boolean): Page {
  const box = bare ? null : figuresPlace(width, matchMedia(STACKED).matches).box
  if (box === null) {
    const corner = { width: 0, height: 0 }
    return { width, height, corner, bottom: 64, edge: 12, arm: { width: 120, height: 44 } }
  }
  const corner = { width: box.right - box.left, height: box.bottom }
  return {
    width,
    height,
    corner,
    bottom: 124,
    foot: buttonsBox(height).right,
    edge: 30,
    arm: { width: 190, height: 80 },
  }
}

interface Props {
  onProjector(projector: Projector | null): void
  /** Nothing else lies over the drawing. */
  readonly bare?: boolean
}

/**
 * The bow from the right and from above, to scale, without WebGL. Stands in until the solid picture is there, and for
 * it where it cannot be. Gives its projector once it has one, and null when it goes.
 */
export function FlatView({ onProjector, bare = false }: Props) {
  const bench = useBench()
  const evaluation = useLive(pictured)
  const played = useLive(playedNow)
  const other = useLive(beside)
  const kept = useLive((state) => beside({ ...state, peeked: null }))
  const preferences = usePreferences()
  const hovered = useLive((state) => state.hovered)
  const selected = useLive((state) => state.selected)
  // The page holds still under a handle, but gives way to a bow that is tilted by its slider.
  const still = useLive(({ gesture, scene }) => gesture !== null && sameTilt(gesture.base.pose, scene.pose))
  const host = useRef<HTMLDivElement>(null)
  const size = useSize(host)
  const [framing] = useState(createFraming)
  const page = size && pageOf(size, bare)
  const frames = page && framing.frames(evaluation, page, still, { played, other: kept?.evaluation ?? null })
  const [projector] = useState(() => {
    const unplaced = { x: 0, y: 0, scale: 1 }
    return createFlatProjector({ side: unplaced, top: unplaced })
  })
  const ready = frames !== null

  useLayoutEffect(() => {
    if (frames !== null) projector.use(frames)
  }, [frames, projector])

  useEffect(() => {
    if (!ready) return
    onProjector(projector)
    return () => onProjector(null)
  }, [ready, projector, onProjector])

  const id = useId()
  const point = (event: PointerEvent) => hover.run(bench, partAt(event.target))
  /** A tap that someone waits for is a place on the bow: here the part's middle, since two drawings share the page. */
  const tap = (path: string | null) => {
    const part = bench.store.getState().evaluation.now.parts.find((each) => each.path === path)
    if (part === undefined || !givePoint(part.centre)) select.run(bench, path)
  }
  return (
    <div className="flat-view" ref={host}>
      <svg
        role="img"
        aria-labelledby={`${id}-name`}
        aria-describedby={`${id}-text`}
        onPointerOver={point}
        onPointerLeave={() => hover.run(bench, null)}
        onPointerDown={(event) => tap(partAt(event.target))}
      >
        <title id={`${id}-name`}>{picture.flat}</title>
        <defs>
          <pattern id="flat-hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <path className="flat-hatching" d="M0 0V7" />
          </pattern>
        </defs>
        {page !== null && frames !== null && (
          <Drawing
            evaluation={evaluation}
            played={played}
            other={other?.evaluation ?? null}
            frames={frames}
            page={page}
            preferences={preferences}
            marked={[hovered, selected]}
          />
        )}
      </svg>
      <p className="visually-hidden" id={`${id}-text`}>
        <Suspense fallback={null}>
          <InWords />
        </Suspense>
      </p>
    </div>
  )
}

const sameTilt = (a: Pose, b: Pose): boolean => a.slopeDeg === b.slopeDeg && a.cantDeg === b.cantDeg

const partAt = (target: EventTarget): string | null =>
  target instanceof Element ? (target.closest<SVGElement>("[data-part]")?.dataset.part ?? null) : null
