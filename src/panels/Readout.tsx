import type { PointerEvent } from "react"
import { show } from "../describe/format"
import { type ReadoutKey, readouts } from "../describe/readouts"
import type { Seldom } from "../state/frame"
import { figures } from "../state/derived"
import { useLive, usePreferences, useSeldom } from "../state/useBench"
import { Beside } from "./Beside"
import { Spread } from "./Spread"

interface Props {
  readonly of: ReadoutKey
  /** With a plus where it is above zero. */
  readonly sign?: boolean
  readonly again?: boolean
}

/**
 * One live number with its unit. `data-value` is the unrounded figure in the report's unit; the text is rounded in
 * the chosen unit. Renders only when its own number or the units change. `again` is for a number that stands elsewhere
 * on the page already: a key is there once.
 */
export function Readout({ of: key, sign = false, again = false }: Props) {
  const { of, quantity } = readouts[key]
  const value = useLive((state) => of(figures(state)))
  const preferences = usePreferences()
  const annotated = useSeldom(isAnnotated)
  if (value === null) return null
  const { text, unit } = show(value, quantity, preferences)
  const plus = sign && value > 0 && /[1-9]/.test(text) ? "+" : ""
  return (
    <span
      className="readout"
      data-readout={again ? undefined : key}
      data-value={again ? undefined : value}
      onPointerEnter={(event) => explain(event, key)}
    >
      <span className="readout-number">{plus + text}</span>
      {unit !== "" && <span className="readout-unit"> {unit}</span>}
      {annotated && (
        <>
          <Spread of={key} />
          <Beside of={key} />
        </>
      )}
    </span>
  )
}

/** What a number is, as the tip of who points at it: there well before a browser shows one. */
async function explain({ currentTarget }: PointerEvent<HTMLElement>, key: ReadoutKey) {
  const { meanings } = await import("../describe/meanings")
  currentTarget.title = meanings[key]
}

/** Whether a number has anything beside it: asked once for all of that, as most benches have none of it. */
const isAnnotated = ({ compared, peeked, scene }: Seldom): boolean =>
  compared !== null || peeked !== null || scene.measurements !== undefined
