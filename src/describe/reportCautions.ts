import type { WeighedPart } from "../scene/evaluate"
import { isOverloaded, ratedLoads } from "../scene/ratedLoads"
import type { Scene } from "../scene/schema"
import { fixed } from "./reportTable"

/** What must be said beside the numbers, the most particular first. */
export function cautions(scene: Scene, parts: readonly WeighedPart[]): string[] {
  const rods = parts.some((part) => part.kind === "rod")
  return [
    ...overloadedRods(scene),
    ...(rods
      ? [
          "A cracked or overloaded rod can fail: keep to its maker's rated end weight and inspect it before each session.",
        ]
      : []),
    "Recheck every thread after a change. Never release a drawn bow without an arrow.",
    "Heavier is not safer: pain in shoulder or elbow means stop and see a professional.",
    "A coach's and the range officer's word stands above any number here.",
  ]
}

/** Each rod that carries more, further out on its chain, than its maker rates it for. */
const overloadedRods = (scene: Scene): string[] =>
  [...ratedLoads(scene)]
    .filter(([, rod]) => isOverloaded(rod))
    .map(
      ([path, { load, rated }]) => `${path} carries ${fixed(load, 1)} g beyond it; its maker rates it for ${rated} g.`,
    )
