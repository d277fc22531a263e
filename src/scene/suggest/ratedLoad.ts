import { chainsOf } from "../address"
import { elementMassG } from "../assemble"
import { nameCounter } from "../assemble/parts"
import type { Element, Scene } from "../schema"

/** What hangs beyond each rod that has a maker's rated end weight, by the rod's path, g. */
function ratedLoads(scene: Scene): Map<string, { load: number; rated: number }> {
  const loads = new Map<string, { load: number; rated: number }>()
  for (const { path, chain } of chainsOf(scene)) {
    const named = nameCounter()
    chain.forEach((element, index) => {
      const owner = `${path}/${named(element.part)}`
      if (element.part !== "rod" || element.maxEndWeightG === undefined) return
      loads.set(owner, { load: massG(chain.slice(index + 1)), rated: element.maxEndWeightG })
    })
  }
  return loads
}

const massG = (chain: readonly Element[]): number => chain.reduce((sum, element) => sum + withArmsG(element), 0)

function withArmsG(element: Element): number {
  if (element.part === "swing") return element.stemMassG + element.bobMassG
  const arms = element.part === "vbar" ? massG(element.left?.chain ?? []) + massG(element.right?.chain ?? []) : 0
  return elementMassG(element) + arms
}

/**
 * Whether the change from `before` to `after` loads some rod past its maker's rated end weight, or one that already
 * is past it still further. Such a change is never suggested, whatever it does for the balance.
 */
export function overloads(before: Scene, after: Scene): boolean {
  const was = ratedLoads(before)
  return [...ratedLoads(after)].some(([path, { load, rated }]) => load > rated && load > (was.get(path)?.load ?? 0))
}
