import { besideSentence, besideText } from "../describe/compareText"
import { type ReadoutKey, readouts } from "../describe/readouts"
import { beside } from "../state/compared"
import { figures } from "../state/derived"
import { useLive, usePreferences, useSeldom } from "../state/useBench"

/** The same number of the setup held to compare, and the difference; nothing while none is held. */
export function Beside({ of: key }: { of: ReadoutKey }) {
  const { of, quantity } = readouts[key]
  const now = useLive((state) => of(figures(state)))
  const other = useLive((state) => {
    const held = beside(state)
    return held === null ? null : of(held.figures)
  })
  const units = usePreferences()
  const which = useSeldom(({ peeked }) => (peeked === null ? "held" : "there"))
  if (now === null || other === null) return null
  return (
    <span className="readout-beside" data-beside={key} data-value={other}>
      {besideSentence(besideText(now, other, quantity, units), which)}
    </span>
  )
}
