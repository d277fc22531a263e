import { useEffect, useMemo, useRef, useState } from "react"
import { type DrawWork, drawWork, knownDrawWork } from "../../scene/drawWork"
import type { Result } from "../../scene/errors"
import type { Bow } from "../../scene/schema"
import { whenQuiet } from "../whenQuiet"

/**
 * The draw curve of a bow. Solving it for new limbs takes longer than a step of a drag has; while they are dragged the
 * curve stays what it was, and is `behind`, until they rest for a moment.
 */
export function useDrawWork(bow: Bow): { readonly work: Result<DrawWork>; readonly behind: boolean } {
  const [first] = useState(() => drawWork(bow))
  const [solvedBow, setSolvedBow] = useState(bow)
  const last = useRef(first)
  // Once the curve of a bow has been solved it is known.
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is known of a bow changes when it is solved
  const known = useMemo(() => knownDrawWork(bow), [bow, solvedBow])
  useEffect(() => {
    if (known !== null) {
      last.current = known
      return
    }
    return whenQuiet(() => {
      const work = drawWork(bow)
      last.current = work
      setSolvedBow(bow)
    })
  }, [bow, known])
  return { work: known ?? last.current, behind: known === null }
}
