import { useCallback, useMemo, useRef, useState } from "react"
import { RADIAN_PER_DEGREE } from "../../core/constants"
import { type MotionModel, restAngle } from "../../core/swing/motion"
import { fixed, shownUnit } from "../../describe/format"
import { motionCsv, motionPointText } from "../../describe/motionText"
import type { NumberField } from "../../scene/fields"
import type { SwingMotion } from "../../scene/hills"
import { useBench, useLive } from "../../state/useBench"
import { Plot, type PlotRun } from "../plot/Plot"
import type { SaveTable } from "./HillsSheet"
import { angleContent, momentContent, motionPlots } from "./motionContent"
import { MotionPicture, type PictureRun } from "./MotionPicture"
import { clockOf, type MotionRun } from "./motionRun"
import { PlainNumber } from "./PlainNumber"
import { createPlayer } from "./playMotion"
import { useMotionRun } from "./useMotionRun"

const own = { coarse: 10, whole: false, fallback: undefined } as const
const slopeField: NumberField = { label: "slope", quantity: "angle", min: -80, max: 80, step: 1, ...own }
const rateField: NumberField = { label: "rate", quantity: "angle", min: 1, max: 360, step: 5, ...own }

/** A swing weight whose motion can be followed. */
export interface Mover extends SwingMotion {
  readonly model: MotionModel
  /** "Back swing weight". */
  readonly title: string
}

interface Props {
  /** The same weights for as long as this stands. */
  readonly movers: readonly Mover[]
  /** Which of them is drawn near. */
  readonly chosen: number
  readonly startDeg: number
  readonly onSave: SaveTable
}

/** Raises or lowers the bow and follows its weights: in the main picture, in a drawing of one of them, and as traces. */
export function Moving({ movers, chosen, startDeg, onSave }: Props) {
  const bench = useBench()
  const [toDeg, setToDeg] = useState(30)
  const [degreesASecond, setRate] = useState(60)
  const [models] = useState(() => movers.map(({ model }) => model))
  const [player] = useState(() => createPlayer(bench, movers))
  const picture = useRef<PictureRun>(null)
  const angles = useRef<PlotRun>(null)
  const moments = useRef<PlotRun>(null)
  const weights = useLive(({ evaluation }) => evaluation.now.parts)
  const units = useLive(({ preferences }) => preferences)
  const { factor, unit, decimals } = shownUnit("moment", units)
  const draw = (shown: MotionRun | null, count: number, at: number) => {
    player.show(shown, at)
    if (shown === null) return
    picture.current?.show(clockOf(shown).slope[at]!, shown.traces[chosen]!.inBow[at]!)
    if (made === null) return
    angles.current?.show(angleContent(made, count, looked(at)), at)
    moments.current?.show(momentContent(made, count, looked(at)), at)
  }
  const { run, going, calm, count, at, aim, step, reset } = useMotionRun(models, startDeg, draw)
  const looked = (index: number) => (calm ? index : null)
  const made = useMemo(() => (run === null ? null : motionPlots(run, factor)), [run, factor])
  // Made anew by each render, so that it always holds what has passed; while a run goes, the frames bring the content.
  const contents = made && {
    angle: angleContent(made, count.current, looked(at)),
    moment: momentContent(made, count.current, looked(at)),
  }
  const say = useCallback(
    (index: number) => (run === null ? "" : motionPointText(run.traces, run.sum, index, units)),
    [run, units],
  )
  const begin = startDeg * RADIAN_PER_DEGREE
  const trace = run?.traces[chosen]
  const mover = movers[chosen]!
  const rest = restAngle(mover.model, begin)
  const weight = weights.find(({ path }) => path === mover.path)?.hung?.weight
  const seconds = made === null ? 1 : made.seconds.at(-1)!
  const alike = {
    say,
    start: at,
    xAxis: { label: "time, s", span: [0, seconds] as const, decimals: 1 },
  }
  return (
    <>
      {weight !== undefined && (
        <MotionPicture
          ref={picture}
          weight={weight}
          locked={trace?.inBow[0] ?? rest}
          slope={trace?.slope[at] ?? begin}
          inBow={trace?.inBow[at] ?? rest}
        />
      )}
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
          <button
            type="button"
            onClick={() =>
              onSave(
                "swing-weight-motion",
                motionCsv(
                  movers.map(({ title }) => title),
                  run.traces,
                  run.sum,
                ),
              )
            }
          >
            Save CSV
          </button>
        )}
      </div>
      <p className="hills-note">While this plays, the big figures stay those of the bow as it is held.</p>
      {calm && run !== null && (
        <div className="hills-buttons">
          <button type="button" aria-disabled={at === 0} onClick={() => step(-1)}>
            Step back
          </button>
          <button type="button" aria-disabled={at === clockOf(run).time.length - 1} onClick={() => step(1)}>
            Step on
          </button>
          <output className="hills-note">{fixed(clockOf(run).time[at]!, 2)}&nbsp;s in the picture</output>
        </div>
      )}
      {run === null || contents === null || made === null ? (
        <p className="hills-note">
          The bow in the main picture is moved with it, and goes back to how it is held once that is over. Dashed: the
          weight locked in its joint where it hangs now. The traces run once the bow moves.
        </p>
      ) : (
        <>
          {movers.length > 1 && (
            <p className="hills-note">
              {movers.map(({ title }, index) => `${index + 1}: ${title}`).join(". ")}. Lines that lie on each other have
              one name.
            </p>
          )}
          <Plot
            ref={angles}
            name="Angle from plumb against time"
            content={contents.angle}
            yAxis={{ label: "from plumb, °", span: made.angleSpan, decimals: 1 }}
            {...alike}
          />
          <Plot
            ref={moments}
            name="Nose-down moment against time"
            content={contents.moment}
            yAxis={{ label: `nose-down, ${unit}`, span: made.momentSpan, decimals }}
            {...alike}
          />
          <p className="hills-note">
            {movers.length > 1
              ? "The moment is what all the weights together bring on the grip, with all it takes to move them; thin, each by itself. Dashed: all of them locked where they started."
              : "The moment is what the weight brings on the grip, with all it takes to move it. Dashed: the weight locked where it started."}
          </p>
        </>
      )}
    </>
  )
}
