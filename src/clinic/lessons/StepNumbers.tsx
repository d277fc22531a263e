import { besideSentence, besideText } from "../../describe/compareText"
import { show } from "../../describe/format"
import { type ReadoutKey, readouts } from "../../describe/readouts"
import { useLive } from "../../state/useBench"
import { numberOf } from "./claims"
import type { Spoken } from "./placeholders"

/** The few numbers a step is about, large, each against the held setup if there is one. */
export function StepNumbers({ of: keys, spoken }: { of: readonly ReadoutKey[]; spoken: Spoken }) {
  if (keys.length === 0) return null
  return (
    <dl className="lesson-numbers">
      {keys.map((key) => (
        <StepNumber key={key} of={key} spoken={spoken} />
      ))}
    </dl>
  )
}

function StepNumber({ of: key, spoken: { now, held } }: { of: ReadoutKey; spoken: Spoken }) {
  const units = useLive((state) => state.preferences)
  const { label, quantity } = readouts[key]
  const value = numberOf(now.figures, key)
  const other = held === null ? null : numberOf(held.figures, key)
  if (value === null) return null
  const { text, unit } = show(value, quantity, units)
  return (
    <div className="lesson-number" data-lesson-number={key} data-value={value}>
      <dt>{label}</dt>
      <dd>
        <span className="lesson-number-text">{text}</span> <span className="lesson-number-unit">{unit}</span>
        {other !== null && (
          <span className="lesson-number-held">{besideSentence(besideText(value, other, quantity, units))}</span>
        )}
      </dd>
    </div>
  )
}
