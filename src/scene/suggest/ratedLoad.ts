import { isOverloaded, ratedLoads } from "../ratedLoads"
import type { Scene } from "../schema"

/**
 * Whether the change from `before` to `after` loads some rod past its maker's rated end weight, or one that already
 * is past it still further. Such a change is never suggested, whatever it does for the balance.
 */
export function overloads(before: Scene, after: Scene): boolean {
  const was = ratedLoads(before)
  return [...ratedLoads(after)].some(([path, rod]) => isOverloaded(rod) && rod.load > (was.get(path)?.load ?? 0))
}
