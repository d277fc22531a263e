import { useCallback, useMemo, useRef, useState } from "react"
import { RADIAN_PER_DEGREE } from "../../core/constants"
import type { SwingWeight } from "../../core/swing"
import { type MotionModel, restAngle } from "../../core/swing/motion"
import { shownUnit } from "../../describe/format"
import { motionCsv, motionPointText } from "../../describe/hillText"
import { partTitle } from "../../describe/partNames"
import { swingMotions } from "../../scene/hills"
import type { NumberField } from "../../scene/fields"
import { useLive } from "../../state/useBench"
import { Plot, type PlotRun } from "../plot/Plot"
import type { SaveTable } from "./HillsSheet"
import { angleContent, momentContent, motionPlots } from "./motionContent"
import { MotionPicture, type PictureRun } from "./MotionPicture"
import type { MotionRun } from "./motionRun"
import { PlainNumber } from "./PlainNumber"
import { useMotionRun } from "./useMotionRun"

const own = { coarse: 10, whole: false, fallback: undefined } as const
const slopeField: NumberField = { label: "slope", quantity: "angle", min: -80, max: 80, step: 1, ...own }
const rateField: NumberField = { label: "rate", quantity: "angle", min: 1, max: 360, step: 5, ...own }

/** A swing weight while the bow is raised or lowered. */
export function Motion({ onSave }: { onSave: SaveTable }) {
  const scene = useLive((state) => state.scene)
  const parts = useLive(({ evaluation }) => evaluation.now.parts)
  const motions = useMemo(() => swingMotions(scene), [scene])
  const [path, setPath] = useState("")
  const chosen = motions.find((motion) => motion.path === path) ?? motions[0]
  const weight = parts.find((part) => part.path === chosen?.path)?.hung?.weight
  if (chosen === undefined || weight === undefined) return null
  return (
    <section>
      <h2 className="sheet-heading">Swing weight in motion</h2>
      {motions.length > 1 && (
        <label className="hills-pick">
          <span>Which weight</span>
          <select value={chosen.path} onChange={(event) => setPath(event.target.value)}>
            {motions.map((motion) => (
              <option key={motion.path} value={motion.path}>
                {partTitle(scene, motion.path)}
              </option>
            ))}
          </select>
        </label>
      )}
      {chosen.model === null ? (
        <p className="hills-note">
          At this cant the ball joint leans sideways on its stop: the weight counts as locked.
        </p>
      ) : (
        <Moving
          // Another weight, or the same one changed, starts afresh.
          key={chosen.path + JSON.stringify(chosen.model)}
          model={chosen.model}
          weight={weight}
          startDeg={scene.pose.slopeDeg}
          onSave={onSave}
        />
      )}
    </section>
  )
}

interface MovingProps {
  readonly model: MotionModel
  readonly weight: SwingWeight
  readonly startDeg: number
  readonly onSave: SaveTable
}

function Moving({ model, weight, startDeg, onSave }: MovingProps) {
  const [toDeg, setToDeg] = useState(30)
  const [degreesASecond, setRate] = useState(60)
  const picture = useRef<PictureRun>(null)
  const angles = useRef<PlotRun>(null)
  const moments = useRef<PlotRun>(null)
  const units = useLive(({ preferences }) => preferences)
  const { factor, unit, decimals } = shownUnit("moment", units)
  const draw = (run: MotionRun, count: number) => {
    const { slope, inBow } = run.trace
    picture.current?.show(slope[count - 1]!, inBow[count - 1]!)
    if (made === null) return
    angles.current?.show(angleContent(made, count), count - 1)
    moments.current?.show(momentContent(made, count), count - 1)
  }
  const { run, going, count, aim, reset } = useMotionRun(model, startDeg, draw)
  const made = useMemo(() => (run === null ? null : motionPlots(run, factor)), [run, factor])
  // Made anew by each render, so that it always holds what has passed; while a run goes, the frames bring the content.
  const contents = made && { angle: angleContent(made, count.current), moment: momentContent(made, count.current) }
  const say = useCallback(
    (index: number) => (run === null ? "" : motionPointText(run.trace, index, units)),
    [run, units],
  )
  const begin = startDeg * RADIAN_PER_DEGREE
  const at = Math.max(0, count.current - 1)
  const seconds = made === null ? 1 : made.seconds.at(-1)!
  const timeAxis = { label: "time, s", span: [0, seconds] as const, decimals: 1 }
  return (
    <>
      <MotionPicture
        ref={picture}
        weight={weight}
        locked={run?.trace.inBow[0] ?? restAngle(model, begin)}
        slope={run?.trace.slope[at] ?? begin}
        inBow={run?.trace.inBow[at] ?? restAngle(model, begin)}
      />
      <PlainNumber label="To a slope of" field={slopeField} value={toDeg} onChange={setToDeg} />
      <PlainNumber label="No faster than, each second" field={rateField} value={degreesASecond} onChange={setRate} />
      <div className="hills-buttons">
        <button type="button" onClick={() => aim({ toDeg, degreesASecond })}>
          {going ? "Go there instead" : "Start"}
        </button>
        <button type="button" aria-disabled={run === null} onClick={reset}>
          Reset
        </button>
        {run !== null && (
          <button type="button" onClick={() => onSave("swing-weight-motion", motionCsv(run.trace))}>
            Save CSV
          </button>
        )}
      </div>
      {run === null || contents === null || made === null ? (
        <p className="hills-note">
          The dashed weight is locked in its joint where it hangs now. Both traces run once the bow moves.
        </p>
      ) : (
        <>
          <Plot
            ref={angles}
            name="Angle from plumb against time"
            content={contents.angle}
            say={say}
            start={at}
            xAxis={timeAxis}
            yAxis={{ label: "from plumb, °", span: made.angleSpan, decimals: 1 }}
            nameRoom={58}
          />
          <Plot
            ref={moments}
            name="Nose-down moment against time"
            content={contents.moment}
            say={say}
            start={at}
            xAxis={timeAxis}
            yAxis={{ label: `nose-down, ${unit}`, span: made.momentSpan, decimals }}
            nameRoom={58}
          />
          <p className="hills-note">
            The moment is what the weight brings on the grip, with all it takes to move it. Dashed: the weight locked
            where it started.
          </p>
        </>
      )}
    </>
  )
}
