import { withUnit } from "../../describe/format"
import { DROP_DECIMALS, turnText } from "../../describe/nudgeText"
import { anglesAt } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import { localNumber } from "../../words/numbers"
import { ByBow } from "./ByBow"
import { lastingOf, type Watched } from "./watched"

/** When the drop is read, s. */
const TIMES = ["0.1", "0.2", "0.3", "0.4", "0.5"]

/** How far each front is down at a few times after the hand has opened. */
export function Drops({ bows }: { readonly bows: readonly Watched[] }) {
  const end = lastingOf(bows[0]!)
  return (
    <section>
      <h2 className="sheet-heading">{nudge.drops}</h2>
      <ByBow
        heading={nudge.after}
        rows={TIMES.filter((time) => Number(time) <= end).map((time) => [time, withUnit(localNumber(time), "s")])}
        figure="drop"
        bows={bows}
        cell={(time, { trace }) => {
          const [, , pitch] = anglesAt(trace, Number(time))
          return { text: turnText(pitch, "pitch", DROP_DECIMALS), value: pitch }
        }}
      />
      <p className="hills-note">{nudge.dropFormula}</p>
    </section>
  )
}
