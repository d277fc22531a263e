import { useCallback, useEffect, useMemo, useRef, useState } from "react"
import { RADIAN_PER_DEGREE } from "../../core/constants"
import { type MotionModel, restAngle } from "../../core/swing/motion"
import { fixed, shownUnit, withUnit } from "../../describe/format"
import { motionCsv, motionPointText } from "../../describe/motionText"
import type { NumberField } from "../../scene/fields"
import type { SwingMotion } from "../../scene/hills"
import { useBench, useLive } from "../../state/useBench"
import { hills } from "../../words/hills"
import { plot } from "../../words/plot"
import { Plot, type PlotRun } from "../plot/Plot"
import { whenQuiet } from "../whenQuiet"
import type { SaveTable } from "./HillsSheet"
import { angleContent, momentContent, motionPlots } from "./motionContent"
import { MotionPicture, type PictureRun } from "./MotionPicture"
import { clockOf, type MotionRun } from "./motionRun"
import { PlainNumber } from "./PlainNumber"
import { createPlayer } from "./playMotion"
import { useMotionRun } from "./useMotionRun"

const words = hills.motion
const own = { coarse: 10, whole: false, fallback: undefined } as const
const slopeField: NumberField = { label: words.to, quantity: "angle", min: -80, max: 80, step: 1, ...own }
const rateField: NumberField = { label: words.rate, quantity: "angle", min: 1, max: 360, step: 5, ...own }

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
  // Said once: where a run has ended, or steps have come to rest.
  const reading = useRef(say)
  useEffect(() => {
    reading.current = say
  })
  useEffect(() => {
    if (run !== null && !going) return whenQuiet(() => bench.say(reading.current(at)))
  }, [bench, run, going, at])
  const begin = startDeg * RADIAN_PER_DEGREE
  const trace = run?.traces[chosen]
  const mover = movers[chosen]!
  const rest = restAngle(mover.model, begin)
  const weight = weights.find(({ path }) => path === mover.path)?.hung?.weight
  const seconds = made === null ? 1 : made.seconds.at(-1)!
  const alike = {
    say,
    start: at,
    xAxis: { label: plot.time, span: [0, seconds] as const, decimals: 1 },
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
      <PlainNumber label={words.to} field={slopeField} value={toDeg} onChange={setToDeg} />
      <PlainNumber label={words.rate} field={rateField} value={degreesASecond} onChange={setRate} />
      <div className="hills-buttons">
        <button type="button" onClick={() => aim({ toDeg, degreesASecond })}>
          {going ? words.instead : words.start}
        </button>
        <button type="button" aria-disabled={run === null} onClick={reset}>
          {words.reset}
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
            {plot.save}
          </button>
        )}
      </div>
      <p className="hills-note">{words.figuresStay}</p>
      {calm && run !== null && (
        <div className="hills-buttons">
          <button type="button" aria-disabled={at === 0} onClick={() => step(-1)}>
            {words.back}
          </button>
          <button type="button" aria-disabled={at === clockOf(run).time.length - 1} onClick={() => step(1)}>
            {words.on}
          </button>
          <output className="hills-note" aria-live="off">
            {words.inPicture(withUnit(fixed(clockOf(run).time[at]!, 2), "s"))}
          </output>
        </div>
      )}
      {run === null || contents === null || made === null ? (
        <p className="hills-note">{words.before}</p>
      ) : (
        <>
          {movers.length > 1 && (
            <p className="hills-note">
              {words.sharedNames(movers.map(({ title }, index) => words.listed(index + 1, title)).join(". "))}
            </p>
          )}
          <Plot
            ref={angles}
            name={words.angles}
            content={contents.angle}
            yAxis={{ label: words.fromPlumb, span: made.angleSpan, decimals: 1 }}
            {...alike}
          />
          <Plot
            ref={moments}
            name={words.moments}
            content={contents.moment}
            yAxis={{ label: words.noseDown(unit), span: made.momentSpan, decimals }}
            {...alike}
          />
          <p className="hills-note">{movers.length > 1 ? words.momentNoteOfSeveral : words.momentNote}</p>
        </>
      )}
    </>
  )
}
