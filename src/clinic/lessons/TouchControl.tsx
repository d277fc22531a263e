import { useId } from "react"
import { setNumber } from "../../commands/numbers"
import { fieldSaid, stepped } from "../../describe/fieldText"
import { Problem } from "../../panels/Problem"
import { twinKey } from "../../scene/address"
import { slotNamed } from "../../scene/slots"
import { useRange } from "../../panels/useRange"
import { type LiveSlot, useSlot } from "../../panels/useSlot"
import { useBench, useLive } from "../../state/useBench"
import { lessons } from "../../words/lessons"
import type { Lesson } from "./schema"
import { controlSpan } from "./stage"

/** The one number that may be touched, as a slider with a button at each end. */
export function TouchControl({ control }: { control: Lesson["control"] }) {
  const slot = useSlot(control.of)
  return slot === null ? null : <Slider slot={slot} control={control} />
}

function Slider({ slot, control }: { slot: LiveSlot; control: Lesson["control"] }) {
  const bench = useBench()
  const units = useLive((state) => state.preferences)
  const { ref, problem } = useRange(control.of, slot.value)
  const id = useId()
  const { value, field } = slot
  const twin = twinKey(control.of)
  const paired = useLive(({ scene }) => twin !== null && slotNamed(scene, twin) !== undefined)
  const title = paired ? lessons.bothArms(slot.title) : slot.title
  const { from, to } = controlSpan(control, field)
  const said = fieldSaid(value, field.quantity, units)
  const step = (steps: number) => {
    const next = Math.min(to, Math.max(from, stepped(value, field, units, steps, false)))
    // Between two allowed values no rule of the scene stands in the way; what does is said by the slider.
    setNumber.run(bench, { key: control.of, value: next })
  }
  return (
    <div className="lesson-control">
      <label htmlFor={id}>{title}</label>
      <output htmlFor={id} className="lesson-control-value">
        {said}
      </output>
      <span className="lesson-control-line">
        <button type="button" aria-label={lessons.less(title)} onClick={() => step(-1)}>
          −
        </button>
        <input
          id={id}
          ref={ref}
          type="range"
          min={from}
          max={to}
          step={field.step}
          defaultValue={value}
          data-slot={control.of}
          aria-valuetext={said}
        />
        <button type="button" aria-label={lessons.more(title)} onClick={() => step(1)}>
          +
        </button>
      </span>
      <Problem text={problem} />
    </div>
  )
}
