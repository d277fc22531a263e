import { type Standing, type Verdict, withSpread } from "../describe/balanceText"
import type { ReadoutKey } from "../describe/readouts"
import { spreads } from "../state/spreads"
import { useLive } from "../state/useBench"
import "./figures.css"

interface Props {
  /** The number it is about. */
  readonly of: ReadoutKey
  readonly verdict: Verdict
  readonly across?: boolean
}

/**
 * How a number stands to its target: a shape and words, so that no colour is needed. A tick inside; an arrow the way
 * the number has gone too far. No shape, and a caution, where nothing measured determines the number.
 */
export function VerdictLine({ of: key, verdict, across = false }: Props) {
  const spread = useLive((state) => spreads(state)?.[key])
  const { standing, words } = withSpread(verdict, spread)
  return (
    <span className="verdict" data-standing={standing}>
      <Shape standing={standing} across={across} />
      {words}
    </span>
  )
}

/** `across` turns the arrows to left and right, for what is measured along the ground. */
function Shape({ standing, across }: { standing: Standing; across: boolean }) {
  if (standing === "untargeted") return null
  return (
    <svg className="verdict-shape" viewBox="0 0 16 16" aria-hidden="true">
      {standing === "inside" ? (
        <>
          <circle cx="8" cy="8" r="7" fill="none" stroke="currentColor" strokeWidth="1.5" />
          <path d="M4.6 8.3 7 10.7 11.5 5.6" fill="none" stroke="currentColor" strokeWidth="1.8" />
        </>
      ) : (
        <path d="M8 1.5 15 14H1Z" fill="currentColor" transform={turned(standing, across)} />
      )}
    </svg>
  )
}

function turned(standing: "under" | "over", across: boolean): string {
  const degrees = (standing === "over" ? 0 : 180) + (across ? 90 : 0)
  return `rotate(${degrees} 8 8)`
}
