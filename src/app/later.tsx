import { type ReactNode, Suspense, useEffect, useState } from "react"
import type { Bench } from "../state/bench"
import { useBench } from "../state/useBench"
import { notices } from "../words/notices"

/** What the first view does without: `uponUse`, in a script of its own. */
export type LaterParts = typeof import("./uponUse")

let asked: Promise<LaterParts> | null = null
let arrived: LaterParts | null = null
const waitingFor = new Set<(here: LaterParts) => void>()

/** Has `run` called with the script once it has come, whoever asked for it, or at once. Returns what calls that off. */
export function onceLater(run: (here: LaterParts) => void): () => void {
  if (arrived !== null) run(arrived)
  else waitingFor.add(run)
  return () => void waitingFor.delete(run)
}

/** Fetches it; where that fails, the next one who asks tries again. */
export function later(): Promise<LaterParts> {
  asked ??= import("./uponUse").then(
    (here) => {
      arrived = here
      // Each by itself: what one does wrong is no fault of the script.
      for (const run of waitingFor) void Promise.resolve(here).then(run)
      waitingFor.clear()
      return here
    },
    (problem) => {
      asked = null
      throw problem
    },
  )
  return asked
}

/** Does with it what was asked for by a press or a drop; says so where it cannot be fetched. */
export function withLater({ setView }: Bench, act: (here: LaterParts) => unknown): void {
  void later().then(act, () => setView({ notice: { tone: "problem", text: notices.partAway, errors: [] } }))
}

interface Props {
  /** Stands in its place until the script, and what the part fetches itself, are there. */
  readonly waiting?: ReactNode
  readonly children: (here: LaterParts) => ReactNode
}

/** A part of the page that is made with that script. */
export function Later({ waiting = null, children }: Props) {
  const bench = useBench()
  const [here, setHere] = useState(arrived)
  useEffect(() => {
    if (here !== null) return
    withLater(bench, setHere)
    return onceLater(setHere)
  }, [bench, here])
  return here === null ? waiting : <Suspense fallback={waiting}>{children(here)}</Suspense>
}
