import type { WeighedPart } from "../scene/evaluate"
import { isOverloaded, ratedLoads } from "../scene/ratedLoads"
import type { Scene } from "../scene/schema"
import { cautions as words } from "../words/cautions"
import { localNumber } from "../words/numbers"
import { fixed } from "./format"

/** What must be said beside the numbers, the most particular first. */
export function cautions(scene: Scene, parts: readonly WeighedPart[]): string[] {
  const rods = parts.some((part) => part.kind === "rod")
  return [...overloadedRods(scene), ...(rods ? [words.rods] : []), words.threads, words.pain, words.coach]
}

/** Each rod that carries more, further out on its chain, than its maker rates it for. */
const overloadedRods = (scene: Scene): string[] =>
  [...ratedLoads(scene)]
    .filter(([, rod]) => isOverloaded(rod))
    .map(([path, { load, rated }]) => words.overloaded(path, fixed(load, 1), localNumber(String(rated))))
