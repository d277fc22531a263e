import type { Evaluation } from "../evaluate"
import type { Scene } from "../schema"

/** The targets a scene can state, by their keys in the file. */
export const targetKeys = ["forwardMm", "upMm", "sideMm", "massMaxG", "netLiftNm"] as const
export type TargetKey = (typeof targetKeys)[number]

/** One stated target and how the bow stands to it, in the file's unit: mm, g or N·m. */
export interface TargetState {
  readonly key: TargetKey
  readonly value: number
  /** -Infinity for a mass, which has no least. */
  readonly min: number
  readonly max: number
  /** Past the nearest edge: positive above the range, negative below, 0 inside. */
  readonly missedBy: number
}

/**
 * The figure each target speaks of, in the file's unit: the balance point (bow axes) and the mass at the pose, the
 * net lift level at full draw.
 */
export function targetFigure(key: TargetKey, { now, fullDraw }: Evaluation): number {
  switch (key) {
    case "forwardMm":
      return now.centre[0] * 1e3
    case "upMm":
      return now.centre[1] * 1e3
    case "sideMm":
      return now.centre[2] * 1e3
    case "massMaxG":
      return now.mass * 1e3
    case "netLiftNm":
      return fullDraw.netLift
  }
}

/** Every target the scene states, in the order of `targetKeys`. The edges themselves are inside. */
export function targetStates(scene: Scene, evaluation: Evaluation): TargetState[] {
  return targetKeys.flatMap((key) => {
    const range = targetRange(scene, key)
    if (range === undefined) return []
    const [min, max] = range
    const value = targetFigure(key, evaluation)
    const missedBy = value < min ? value - min : value > max ? value - max : 0
    return [{ key, value, min, max, missedBy }]
  })
}

function targetRange({ target }: Scene, key: TargetKey): readonly [number, number] | undefined {
  if (key !== "massMaxG") return target[key]
  return target.massMaxG === undefined ? undefined : [Number.NEGATIVE_INFINITY, target.massMaxG]
}
