import { fieldSaid } from "../../describe/fieldText"
import { PlainNumber } from "../../panels/hills/PlainNumber"
import type { NumberField } from "../../scene/fields"
import { useLive } from "../../state/useBench"
import { nudge } from "../../words/nudge"

interface Props {
  readonly label: string
  readonly field: NumberField
  /** In the field's own unit. */
  readonly value: number
  onChange(value: number): void
}

/** A number of a nudge: typed, or set with the slider under it. */
export function Amount({ label, field, value, onChange }: Props) {
  const units = useLive(({ preferences }) => preferences)
  return (
    <div className="nudge-amount">
      <PlainNumber label={label} field={field} value={value} onChange={onChange} />
      <input
        type="range"
        aria-label={nudge.slider(label)}
        min={field.min}
        max={field.max}
        step={field.step}
        value={value}
        aria-valuetext={fieldSaid(value, field.quantity, units)}
        onChange={(event) => onChange(event.target.valueAsNumber)}
      />
    </div>
  )
}
