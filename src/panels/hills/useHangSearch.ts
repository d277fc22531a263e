import { useCallback, useEffect, useRef, useState } from "react"
import type { SceneError } from "../../scene/errors"
import { type FlattestAnswer, type HangProgress, type HangQuestion, hangSearch } from "../../scene/hills"
import type { Scene } from "../../scene/schema"
import { soon } from "../../state/frame"

/** Of each frame, ms: the rest is for the page. */
const SLICE_MS = 8

export interface Answered {
  readonly asked: Scene
  readonly answer: FlattestAnswer
}

interface Search {
  readonly searching: boolean
  readonly answered: Answered | null
  readonly errors: readonly SceneError[]
  ask(scene: Scene, question: HangQuestion): void
  /** Ends the search with the best of what has been tried. */
  cancel(): void
}

/** Runs searches a slice a frame; `onProgress` is told once a slice. */
export function useHangSearch(onProgress: (progress: HangProgress) => void): Search {
  const [searching, setSearching] = useState(false)
  const [answered, setAnswered] = useState<Answered | null>(null)
  const [errors, setErrors] = useState<readonly SceneError[]>([])
  const stopping = useRef(false)
  const gone = useRef(false)
  const telling = useRef(onProgress)
  useEffect(() => {
    telling.current = onProgress
  })
  useEffect(() => {
    gone.current = false
    return () => {
      gone.current = true
    }
  }, [])

  const ask = useCallback((scene: Scene, question: HangQuestion) => {
    const found = hangSearch(scene, question)
    setErrors(found.ok ? [] : found.errors)
    if (!found.ok) return
    const search = found.value
    stopping.current = false
    setSearching(true)
    setAnswered(null)
    const slice = () => {
      if (gone.current) return
      const until = performance.now() + SLICE_MS
      let step = search.next(stopping.current)
      while (step.done !== true && performance.now() < until) step = search.next(stopping.current)
      if (step.done === true) {
        setSearching(false)
        setAnswered({ asked: scene, answer: step.value })
        return
      }
      telling.current(step.value)
      soon(slice)
    }
    soon(slice)
  }, [])
  const cancel = useCallback(() => {
    stopping.current = true
  }, [])
  return { searching, answered, errors, ask, cancel }
}
