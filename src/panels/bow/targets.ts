import { setTarget } from "../../commands/setup"
import type { Result } from "../../scene/errors"
import type { Evaluation } from "../../scene/evaluate"
import type { Target } from "../../scene/schema"
import type { TargetKey } from "../../scene/suggest"
import type { Bench } from "../../state/bench"

/** Half the width of a first range: what a club bow is commonly set up to (common practice, no source). */
const FIRST_HALF_MM = 20
const FIRST_HALF_SIDE_MM = 5
const FIRST_HALF_NM = 0.5

/**
 * A target to begin with: around where the bow is now, on round numbers, so that switching one on judges nothing yet.
 * To the side and for the net at full draw around zero, which is what one wants there.
 */
export function firstTarget(key: TargetKey, { now }: Evaluation): Partial<Target> {
  switch (key) {
    case "forwardMm":
      return { forwardMm: around(now.centre[0] * 1e3, FIRST_HALF_MM) }
    case "upMm":
      return { upMm: around(now.centre[1] * 1e3, FIRST_HALF_MM) }
    case "sideMm":
      return { sideMm: [-FIRST_HALF_SIDE_MM, FIRST_HALF_SIDE_MM] }
    case "massMaxG":
      return { massMaxG: Math.ceil((now.mass * 1e3) / 50) * 50 }
    case "netLiftNm":
      return { netLiftNm: [-FIRST_HALF_NM, FIRST_HALF_NM] }
  }
}

const around = (mm: number, half: number): [number, number] => {
  const middle = Math.round(mm / 5) * 5
  return [middle - half, middle + half]
}

/** Switches one target on with a first range, or off. */
export function switchTarget(bench: Bench, key: TargetKey): Result<void> {
  const { scene, evaluation } = bench.store.getState()
  const target = scene.target[key] === undefined ? firstTarget(key, evaluation) : { [key]: undefined }
  return setTarget.run(bench, { target })
}
