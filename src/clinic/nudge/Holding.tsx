import { holdText, noStringText } from "../../describe/nudgeText"
import { Choice } from "../../panels/Choice"
import { success } from "../../scene/errors"
import { type HandHold, heldBy, type HoldChoice, nudgeFields } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import { Amount } from "./Amount"
import { ask } from "./asked"
import type { Watched } from "./watched"

const done = success(undefined)
const numbers = [
  ["pitch", nudgeFields.pitch],
  ["yaw", nudgeFields.yaw],
  ["roll", nudgeFields.roll],
  ["damping", nudgeFields.damping],
] as const

interface Props {
  readonly bows: readonly Watched[]
  readonly hold: HoldChoice
  /** Names of the setups that no string can be told to hold. */
  readonly stringless: readonly string[]
}

/** What holds the bows: by name, or by numbers of one's own. */
export function Holding({ bows, hold, stringless }: Props) {
  const choice = typeof hold === "string" ? hold : "own"
  const here = heldBy(hold, bows[0]!.evaluation)
  const choose = (chosen: typeof choice) => {
    ask({ hold: chosen === "own" ? here : chosen })
    return done
  }
  const set = (key: keyof HandHold, value: number) => ask({ hold: { ...here, [key]: value } })
  // What is the same for both is said once.
  const told = new Map(bows.map(({ name, evaluation, tensor }) => [holdText(heldBy(hold, evaluation), tensor), name]))
  const { free, string, loose, own } = nudge.hold.names
  return (
    <section>
      <Choice
        name={nudge.hold.heading}
        value={choice}
        options={[
          ["free", free],
          ...(stringless.length === 0 ? [["string", string] as const] : []),
          ["loose", loose],
          ["own", own],
        ]}
        onChoose={choose}
      />
      {stringless.length > 0 && <p className="hills-note">{noStringText(stringless)}</p>}
      <p className="hills-note">{nudge.hold.meaning[choice]}</p>
      {choice !== "free" &&
        [...told].map(([text, name]) => (
          <p key={text} className="hills-note" data-figure="hold">
            {told.size > 1 ? nudge.hold.of(name, text) : text}
          </p>
        ))}
      <details className="figure-more nudge-numbers">
        <summary>{nudge.hold.numbers}</summary>
        {numbers.map(([key, field]) => (
          <Amount
            key={key}
            label={field.label}
            field={field}
            value={Number(here[key].toFixed(2))}
            onChange={(value) => set(key, value)}
          />
        ))}
      </details>
    </section>
  )
}
