import { chainsOf } from "./address"
import { elementMassG } from "./assemble"
import { nameCounter } from "./assemble/parts"
import type { Element, Scene } from "./schema"

/** What hangs beyond a rod, further out on its chain and on whatever that carries, and its maker's rating; g. */
export interface RatedLoad {
  readonly load: number
  readonly rated: number
}

/** g; float64 noise of a sum of masses, far below any scale. */
const ROUNDING = 1e-6

/** The load of each rod that has a maker's rated end weight, by the rod's path. */
export function ratedLoads(scene: Scene): ReadonlyMap<string, RatedLoad> {
  const loads = new Map<string, RatedLoad>()
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

/** Whether a rod carries more than its maker rates it for. */
export const isOverloaded = ({ load, rated }: RatedLoad): boolean => load > rated + ROUNDING

const massG = (chain: readonly Element[]): number => chain.reduce((sum, element) => sum + withArmsG(element), 0)

function withArmsG(element: Element): number {
  if (element.part === "swing") return element.stemMassG + element.bobMassG
  const arms = element.part === "vbar" ? massG(element.left?.chain ?? []) + massG(element.right?.chain ?? []) : 0
  return elementMassG(element) + arms
}
