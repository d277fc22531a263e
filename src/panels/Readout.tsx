import { show } from "../describe/format"
import { type ReadoutKey, readouts } from "../describe/readouts"
import { figures } from "../state/derived"
import { useLive } from "../state/useBench"

/**
 * One live number with its unit. `data-value` is the unrounded figure in the report's unit; the text is rounded in
 * the chosen unit. Renders only when its own number or the units change.
 */
export function Readout({ of: key, sign = false }: { of: ReadoutKey; sign?: boolean }) {
  const { of, quantity, meaning } = readouts[key]
  const value = useLive((state) => of(figures(state)))
  const preferences = useLive((state) => state.preferences)
  if (value === null) return null
  const { text, unit } = show(value, quantity, preferences)
  const plus = sign && value > 0 && Number(text) !== 0 ? "+" : ""
  return (
    <span className="readout" data-readout={key} data-value={value} title={meaning}>
      <span className="readout-number">{plus + text}</span>
      {unit !== "" && <span className="readout-unit"> {unit}</span>}
    </span>
  )
}
