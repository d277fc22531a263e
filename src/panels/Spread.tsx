import { fixed, shownUnit } from "../describe/format"
import { type ReadoutKey, readouts } from "../describe/readouts"
import { spreads } from "../state/spreads"
import { useLive, usePreferences } from "../state/useBench"
import { figures as words } from "../words/figures"

/** "± 1.2": how far a live number may be off at 95 % on a measured bow, in the number's own unit; nothing on any other. */
export function Spread({ of: key }: { of: ReadoutKey }) {
  const spread = useLive((state) => spreads(state)?.[key])
  const units = usePreferences()
  if (spread === undefined) return null
  const { factor, decimals } = shownUnit(readouts[key].quantity, units)
  const known = Number.isFinite(spread)
  return (
    <span className="readout-spread" data-spread={spread} title={known ? words.known : words.open}>
      {`±\u00a0${known ? fixed(spread * factor, decimals) : "?"}`}
    </span>
  )
}
