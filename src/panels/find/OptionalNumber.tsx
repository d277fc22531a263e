import type { NumberField } from "../../scene/fields"
import { findSheet } from "../../words/findSheet"
import { Check } from "../Check"
import { PlainNumber } from "../hills/PlainNumber"

interface Props {
  readonly field: NumberField
  /** What the number belongs to, where several have one like it. */
  readonly owner?: string
  /** In place of the field's own. */
  readonly label?: string
  /** Beside the number itself. */
  readonly inner?: string
  readonly value: number | undefined
  /** What it begins with when it is switched on. */
  readonly start: number
  onChange(value: number | undefined): void
}

const DONE = { ok: true, value: undefined } as const

/** A number that need not be there: a switch, and the number while it is on. */
export function OptionalNumber({
  owner,
  field,
  label = field.label,
  inner = findSheet.piece.value,
  value,
  start,
  onChange,
}: Props) {
  const title = label.charAt(0).toUpperCase() + label.slice(1)
  return (
    <div className="find-optional">
      <Check
        checked={value !== undefined}
        onSwitch={() => {
          onChange(value === undefined ? start : undefined)
          return DONE
        }}
      >
        {title}
      </Check>
      {value !== undefined && (
        <PlainNumber
          label={inner}
          name={owner === undefined ? label : findSheet.piece.numberOf(label, owner)}
          field={field}
          value={value}
          onChange={onChange}
        />
      )}
    </div>
  )
}
