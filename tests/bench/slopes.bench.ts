/** The slope plot of a rig with two swing weights at full draw: all three curves on 91 slopes. */
import { fullDraw } from "../../src/scene/evaluate"
import { compareSlopes } from "../../src/scene/hills"
import { placeLimbs } from "../../src/scene/limbPlace"
import { validateScene } from "../../src/scene/parse"
import { fullDocument, rigged, swing } from "../scene/documents"
import type { Ratio } from "../tools/bench"
import { medianMs } from "./median"

/** What a refresh of the plot may take while something is dragged, ms. */
const BUDGET = 4

function needed<T>(result: { ok: true; value: T } | { ok: false }): T {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}

export async function run(): Promise<Ratio[]> {
  const { rig } = fullDocument() as {
    rig: { mount: "front" | "upper" | "lower" | "back"; chain: Record<string, unknown>[] }[]
  }
  const chains = Object.fromEntries(rig.map(({ mount, chain }) => [mount, chain]))
  const scene = needed(validateScene(rigged({ ...chains, lower: [swing({ joint: "ball" })] })))
  const drawn = needed(placeLimbs(scene.bow, 1))
  const { slopesDeg } = compareSlopes(scene, drawn)
  const curves = medianMs(() => compareSlopes(scene, drawn))
  const assembled = medianMs(() => slopesDeg.map((slopeDeg) => needed(fullDraw(scene, slopeDeg)).netLift))
  const what = "slope plot, three curves"
  return [
    {
      what,
      ratio: curves / BUDGET,
      against: `budget of ${BUDGET} ms`,
      detail: `${curves.toFixed(3)} ms; below 1 is within`,
    },
    {
      what,
      ratio: curves / assembled,
      against: "one curve by a full draw each slope",
      detail: `${curves.toFixed(3)} ms to ${assembled.toFixed(3)} ms; below 1 is faster`,
    },
  ]
}
