import { type ReactNode, useState } from "react"
import "./problem.css"
import { problemText } from "../describe/problemText"
import type { Result } from "../scene/errors"
import { useBench } from "../state/useBench"

/** Why something was refused, said as soon as it is there; nothing while all is well. */
export function Problem({ text, id }: { text: string | null; id?: string }) {
  if (text === null) return null
  return (
    <p className="problem" role="alert" id={id}>
      {text}
    </p>
  )
}

interface Told {
  /** The last refusal, to be put where it happened. */
  readonly problem: ReactNode
  /** Takes a command's result and hands it on: a refusal is shown, a success announced as `said`. */
  told(result: Result<void>, said?: string): Result<void>
}

/** What becomes of the commands that a piece of a sheet runs. */
export function useProblem(): Told {
  const bench = useBench()
  const [text, setText] = useState<string | null>(null)
  return {
    problem: <Problem text={text} />,
    told(result, said) {
      setText(result.ok ? null : problemText(bench.store.getState(), result.errors))
      if (result.ok && said !== undefined) bench.say(said)
      return result
    },
  }
}
