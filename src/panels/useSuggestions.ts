import { useEffect, useState } from "react"
import type { Scene } from "../scene/schema"
import { type Suggestion, suggestions, type TargetState, targetStates } from "../scene/suggest"
import { useBench } from "../state/useBench"
import { whenQuiet } from "./whenQuiet"

/** Missed targets and the changes that would meet them, as of `scene`. */
export interface Found {
  readonly scene: Scene
  readonly missed: readonly TargetState[]
  readonly suggestions: readonly Suggestion[]
}

/**
 * The suggestions for the scene on the bench, looked for when nothing has changed for a moment and the browser is
 * idle, never while a drag is open. Until new ones are found the old stand, with the scene they were for.
 */
export function useSuggestions(): Found | null {
  const bench = useBench()
  const [found, setFound] = useState<Found | null>(null)
  useEffect(() => {
    let stop = () => {}
    const search = () => {
      const { scene, evaluation, gesture } = bench.store.getState()
      if (gesture !== null) return wait()
      const missed = targetStates(scene, evaluation).filter(({ missedBy }) => missedBy !== 0)
      setFound({ scene, missed, suggestions: missed.length === 0 ? [] : suggestions(scene, evaluation) })
    }
    const wait = () => {
      stop()
      stop = whenQuiet(search)
    }
    wait()
    const unsubscribe = bench.store.subscribe((state, before) => {
      if (state.scene !== before.scene) wait()
    })
    return () => {
      unsubscribe()
      stop()
    }
  }, [bench])
  return found
}
