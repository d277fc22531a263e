import { holdToCompare, stopComparing, swapCompared } from "../commands/compare"
import { useBench, useLive } from "../state/useBench"
import { compare as words } from "../words/compare"
import "./compare.css"
import { useProblem } from "./Problem"

/** Holding a setup beside the one on the bench: its name, and what can be done with the two. `onPick` asks for a file. */
export default function Compare({ onPick }: { onPick: () => void }) {
  const bench = useBench()
  const held = useLive((state) => state.compared?.name ?? null)
  const { problem, told } = useProblem()
  if (held === null) {
    return (
      <div className="compare">
        <button type="button" onClick={() => holdToCompare.run(bench, undefined)}>
          {holdToCompare.label}
        </button>
        <button type="button" onClick={onPick}>
          {words.file}
        </button>
      </div>
    )
  }
  return (
    <div className="compare" data-holding>
      <p className="compare-name">
        <span className="compare-mark" aria-hidden="true" />
        {words.with} <strong>{held}</strong>
      </p>
      <button type="button" onClick={() => told(swapCompared.run(bench, undefined))}>
        {swapCompared.label}
      </button>
      <button type="button" onClick={() => stopComparing.run(bench, undefined)}>
        {stopComparing.label}
      </button>
      {problem}
    </div>
  )
}
