import { useEffect } from "react"
import { compareSetup } from "../../commands/find"
import type { Asked, FoundSetup } from "../../scene/find"
import { useBench, useLive } from "../../state/useBench"

/** Shows a setup through the present rig while it is looked at. */
export function useGhost(asked: Asked, setup: FoundSetup | null) {
  const bench = useBench()
  // Held as the bow is, also when that is turned meanwhile.
  const pose = useLive(({ scene }) => scene.pose)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the pose is read from the scene when the setup is placed in it
  useEffect(() => {
    if (setup === null) return
    compareSetup.run(bench, { asked: asked.scene, mounts: asked.question.mounts, rig: setup.rig })
    return () => void compareSetup.run(bench, null)
  }, [bench, asked, setup, pose])
}
