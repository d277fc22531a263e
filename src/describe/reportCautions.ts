import { valueAt } from "../scene/address"
import type { WeighedPart } from "../scene/evaluate"
import type { Element, Scene } from "../scene/schema"
import { fixed } from "./reportTable"

/** What must be said beside the numbers, the most particular first. */
export function cautions(scene: Scene, parts: readonly WeighedPart[]): string[] {
  const rods = parts.some((part) => part.kind === "rod")
  return [
    ...parts.flatMap((part) => overloadedRod(scene, part, parts)),
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

/** A rod that carries more, further out on its chain, than its maker rates it for. */
function overloadedRod(scene: Scene, rod: WeighedPart, parts: readonly WeighedPart[]): string[] {
  if (rod.kind !== "rod") return []
  const element = valueAt(scene, rod.address) as Element | undefined
  if (element?.part !== "rod" || element.maxEndWeightG === undefined) return []
  const carried = parts.filter((part) => isBeyond(part, rod)).reduce((sum, part) => sum + part.mass * 1e3, 0)
  if (carried <= element.maxEndWeightG + ROUNDING) return []
  return [`${rod.path} carries ${fixed(carried, 1)} g beyond it; its maker rates it for ${element.maxEndWeightG} g.`]
}

/** g; float64 noise of a sum of masses, far below any scale. */
const ROUNDING = 1e-6

/** Whether a part stands further out than `rod` on the same chain, or hangs on something that does. */
function isBeyond(part: WeighedPart, rod: WeighedPart): boolean {
  const last = rod.address.length - 1
  const step = part.address[last]
  const sameChain = rod.address.slice(0, last).every((each, index) => each === part.address[index])
  return sameChain && typeof step === "number" && step > Number(rod.address[last])
}
