import { landingText } from "../../describe/nudgeText"
import { Choice } from "../../panels/Choice"
import { success } from "../../scene/errors"
import { landingOf, nudgeFields } from "../../scene/nudge"
import { useLive } from "../../state/useBench"
import { nudge } from "../../words/nudge"
import { Amount } from "./Amount"
import { ask, type Distance, faces, useAsked } from "./asked"
import { ByBow } from "./ByBow"
import type { Clock } from "./clock"
import { Face } from "./Face"
import type { Watched } from "./watched"

const distances = Object.keys(faces) as Distance[]
const done = success(undefined)

/** Where each bow would have sent its arrow: on the face at one distance, and as numbers at all of them. */
export function Target({ bows, clock }: { readonly bows: readonly Watched[]; readonly clock: Clock }) {
  const { distance, leavesS } = useAsked()
  const units = useLive(({ preferences }) => preferences)
  return (
    <section>
      <h2 className="sheet-heading">{nudge.target}</h2>
      <Choice
        name={nudge.distance}
        value={distance}
        options={distances.map((each) => [each, `${each} m`] as const)}
        onChoose={(chosen) => {
          ask({ distance: chosen })
          return done
        }}
      />
      <Face bows={bows} clock={clock} distance={distance} leavesS={leavesS} />
      <Amount
        label={nudge.leaves}
        field={nudgeFields.leavesS}
        value={leavesS}
        onChange={(value) => ask({ leavesS: value })}
      />
      <ByBow
        heading={nudge.distance}
        rows={distances.map((each) => [each, `${each} m`])}
        figure="landing"
        bows={bows}
        cell={(each, { trace }) => {
          const where = landingOf(trace, leavesS, Number(each))
          return { text: landingText(where, units), value: where.right }
        }}
      />
      <p className="hills-note">{nudge.rigid}</p>
    </section>
  )
}
