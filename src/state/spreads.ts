import type { Evaluation } from "../scene/evaluate"
import type { Spreads } from "../scene/measure"
import type { Scene } from "../scene/schema"
import type { Bench, BenchState } from "./bench"

/** What works a ± out; it comes with the linear algebra, and only once a scene has readings. */
type Work = (scene: Scene, evaluation: Evaluation) => Spreads | null

let work: Work | null = null
const known = new WeakMap<Evaluation, Spreads | null>()

/**
 * How far each live number may be off at 95 %, by the report's key, where the bow on the bench is the measured one. Null
 * where it is not, and while what works it out is still on its way.
 */
export function spreads({ scene, evaluation }: Pick<BenchState, "scene" | "evaluation">): Spreads | null {
  if (work === null || scene.measurements === undefined) return null
  let found = known.get(evaluation)
  if (found === undefined) {
    found = work(scene, evaluation)
    known.set(evaluation, found)
  }
  return found
}

/** Fetches what `spreads` needs as soon as a scene on the bench has readings, and lets the page know once it is there. */
export function followReadings({ store }: Bench, fetch: () => Promise<Work>): void {
  let asked = false
  const look = () => {
    if (asked || store.getState().scene.measurements === undefined) return
    asked = true
    fetch().then(
      (fetched) => {
        work = fetched
        store.setState({})
      },
      () => {
        // Without a network: the next change asks again.
        asked = false
      },
    )
  }
  look()
  store.subscribe(look)
}
