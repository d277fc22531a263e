import { trySetup } from "../../commands/find"
import type { Asked, FoundSetup } from "../../scene/find"
import { useBench } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { useProblem } from "../Problem"

const { trying: words } = findSheet

interface Props {
  readonly asked: Asked
  readonly setup: FoundSetup
  /** "setup 3", "the nearest for mass". */
  readonly name: string
  readonly fits: boolean
}

/** Puts a setup on the bow; Undo takes it back. */
export function TrySetup({ asked, setup, name, fits }: Props) {
  const bench = useBench()
  const { problem, told } = useProblem()
  const tryIt = () => {
    if (!fits) return
    const found = { asked: asked.scene, mounts: asked.question.mounts, rig: setup.rig }
    told(trySetup.run(bench, { ...found, name: words.tried(name) }), words.onBow(name))
  }
  return (
    <>
      <button type="button" className="find-try" aria-disabled={!fits} aria-label={words.label(name)} onClick={tryIt}>
        {words.button}
      </button>
      {problem}
    </>
  )
}
