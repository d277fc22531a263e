/** The rate of every figure by every number of a full recurve, half drawn on a slope. */
import { readFileSync } from "node:fs"
import { join } from "node:path"
import { type Evaluation, evaluate } from "../../src/scene/evaluate"
import { parseScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { sensitivities } from "../../src/scene/sensitivity"
import { slotsOf } from "../../src/scene/slots"
import { withValues } from "../../src/scene/suggest"
import type { Ratio } from "../tools/bench"
import { medianMs } from "./median"

/** What all rates may take, ms. */
const BUDGET = 1.5

const file = join(import.meta.dirname, "../../scenes/target-recurve-straight-bar.json")

function shipped(): Scene {
  const read = parseScene(readFileSync(file, "utf8"))
  if (!read.ok) throw new Error(JSON.stringify(read.errors))
  return { ...read.value, pose: { draw: 0.6, slopeDeg: 10, cantDeg: 3 } }
}

function evaluated(scene: Scene): Evaluation {
  const found = evaluate(scene)
  if (!found.ok) throw new Error(JSON.stringify(found.errors))
  return found.value
}

export async function run(): Promise<Ratio[]> {
  const scene = shipped()
  const base = evaluated(scene)
  let length = slotsOf(scene).find(({ key }) => key === "bow/limbs:lengthMm")!.value
  // Limbs not met before, as when one of their numbers is dragged.
  const otherLimbs = () => {
    length += 0.001
    return evaluated(withValues(scene, [{ key: "bow/limbs:lengthMm", value: length }]))
  }
  const solving = medianMs(otherLimbs)
  const both = medianMs(() => {
    const evaluation = otherLimbs()
    sensitivities(evaluation.scene, evaluation)
  })
  const onKnownLimbs = medianMs(() => sensitivities(scene, base))
  const numbers = slotsOf(scene).filter(({ owner }) => owner !== "target")
  const differences = medianMs(() => {
    for (const { key, value } of numbers) evaluate(withValues(scene, [{ key, value: value * (1 + 1e-6) }]))
  })
  const onOtherLimbs = both - solving
  return [
    {
      what: "all rates of a full recurve",
      ratio: onOtherLimbs / BUDGET,
      against: `budget of ${BUDGET} ms`,
      detail: `${onOtherLimbs.toFixed(2)} ms, or ${onKnownLimbs.toFixed(2)} ms while the limbs stay; below 1 is within`,
    },
    {
      what: "all rates of a full recurve",
      ratio: onOtherLimbs / differences,
      against: "one more evaluation a number",
      detail: `${onOtherLimbs.toFixed(2)} ms to ${differences.toFixed(2)} ms for ${numbers.length} numbers; below 1 is faster`,
    },
  ]
}
