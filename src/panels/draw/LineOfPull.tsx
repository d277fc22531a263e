import { useId, useState } from "react"
import { fieldSaid } from "../../describe/fieldText"
import { elbowText, nockText } from "../../describe/liftText"
import { useLive } from "../../state/useBench"
import { draw } from "../../words/draw"
import { NumberField } from "../NumberField"
import { Readout } from "../Readout"
import { useRange } from "../useRange"
import { useSlot } from "../useSlot"

const words = draw.pull

/** Where the pull passes the grip, and what that lifts. */
export function LineOfPull() {
  const elbow = useLive(({ evaluation, preferences }) => elbowText(evaluation, preferences))
  const nock = useLive(({ evaluation, preferences }) => nockText(evaluation, preferences))
  return (
    <section>
      <h2 className="sheet-heading">{words.heading}</h2>
      <dl className="figure-rows">
        <div className="figure-row">
          <dt>{words.lift}</dt>
          <dd>
            <Readout of="fullDraw.liftNm" sign again />
          </dd>
        </div>
        <div className="figure-row">
          <dt>{words.net}</dt>
          <dd>
            <Readout of="fullDraw.netLiftNm" sign again />
          </dd>
        </div>
      </dl>
      <LiftKnob of="archer:elbowElevationDeg" label={words.elbow} from={-5} to={15} />
      <p className="draw-note">{elbow}</p>
      <LiftKnob of="bow:nockHeightMm" label={words.nock} from={0} to={100} />
      <p className="draw-note">{nock}</p>
    </section>
  )
}

interface KnobProps {
  readonly of: string
  readonly label: string
  /** Where the number usually lies; the slider is as wide as the file allows once it lies elsewhere. */
  readonly from: number
  readonly to: number
}

/** One number as a field and as a slider. */
function LiftKnob({ of: key, label, from, to }: KnobProps) {
  const slot = useSlot(key)
  return slot === null ? null : (
    <div className="lift-knob">
      <NumberField of={key} label={label} />
      <LiftSlider of={key} label={label} from={from} to={to} />
    </div>
  )
}

function LiftSlider({ of: key, label, from, to }: KnobProps) {
  const slot = useSlot(key)
  const units = useLive(({ preferences }) => preferences)
  const id = useId()
  const value = slot?.value ?? 0
  const outside = value < from || value > to
  const [wide, setWide] = useState(outside)
  // Once wide it stays wide: a scale that shrinks under a dragging hand would throw the value about.
  if (outside && !wide) setWide(true)
  const { ref, problem } = useRange(key, value)
  if (slot === null) return null
  return (
    <>
      <input
        ref={ref}
        type="range"
        min={wide ? slot.field.min : from}
        max={wide ? slot.field.max : to}
        step={slot.field.step}
        defaultValue={value}
        aria-label={words.slider(label)}
        aria-valuetext={fieldSaid(value, slot.field.quantity, units)}
        aria-describedby={problem === null ? undefined : id}
      />
      {problem !== null && (
        <p className="problem" role="alert" id={id}>
          {problem}
        </p>
      )}
    </>
  )
}
