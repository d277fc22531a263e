import { trySetup } from "../../commands/find"
import type { Asked, FoundSetup } from "../../scene/find"
import { useBench } from "../../state/useBench"
import { useProblem } from "../Problem"

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
    told(trySetup.run(bench, { ...found, name: `${name} tried` }), `${name} is on the bow. Undo takes it back.`)
  }
  return (
    <>
      <button type="button" className="find-try" aria-disabled={!fits} aria-label={`Try ${name}`} onClick={tryIt}>
        Try
      </button>
      {problem}
    </>
  )
}
