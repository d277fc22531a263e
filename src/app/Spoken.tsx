import { useLive } from "../state/useBench"

/** The live region: what was just done, once, politely. */
export function Spoken() {
  const text = useLive((state) => state.said.text)
  const count = useLive((state) => state.said.count)
  return (
    <div className="visually-hidden" role="status" aria-live="polite">
      <span key={count}>{text}</span>
    </div>
  )
}
