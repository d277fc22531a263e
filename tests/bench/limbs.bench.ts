/** Recurve limbs: one new draw against odex shooting the same limb, and a cold draw curve against its 20 ms. */
import { execFileSync } from "node:child_process"
import { mkdtempSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { buildSync } from "esbuild"
import { type BracedLimbs, limbSensitivities, solveDrawn } from "../../src/core/limbs"
import { braced, targetBow } from "../core/limbs/bows"
import { type OdexLimb, shootWithOdex } from "../core/limbs/odexLimb"
import type { Ratio } from "../tools/bench"
import { medianMs } from "./median"

/** Budget for a draw curve in a program that has just started, from the limb's numbers to 25 points. */
const COLD_BUDGET_MS = 20
/** Fresh processes; the quickest counts, since whatever else the machine does can only slow one down. */
const COLD_RUNS = 9

const limbs = braced(targetBow)

/** Draws 3 mm apart, back and forth, as a dragged string asks for them. */
function* draws(): Generator<number> {
  for (let frame = 0; ; frame += 1) yield 0.4 + 0.003 * Math.abs((frame % 80) - 40)
}

function ours(bow: BracedLimbs): () => unknown {
  const asked = draws()
  let near = bow.brace
  return () => {
    const solved = solveDrawn(bow, asked.next().value as number, near)
    if (!solved.ok) throw new Error(solved.reason)
    near = solved.value
    return near
  }
}

function theirs(bow: BracedLimbs, tolerance: number): () => unknown {
  const asked = draws()
  const start = solveDrawn(bow, asked.next().value as number)
  if (!start.ok) throw new Error(start.reason)
  const { tip, unknowns } = start.value
  let near: OdexLimb = { tipForward: tip.forward, tipOut: tip.out, load: unknowns.load }
  return () => {
    near = shootWithOdex(bow, asked.next().value as number, near, tolerance)
    return near
  }
}

/** Milliseconds of strung bow and 25-point draw curve, in a process that has done nothing before. */
function coldRuns(): number[] {
  const folder = mkdtempSync(join(tmpdir(), "limbs-cold-"))
  try {
    const script = join(folder, "cold.mjs")
    const source = `
      import { drawCurve, solveBrace } from "./src/core/limbs"
      const begin = performance.now()
      const bow = solveBrace(${JSON.stringify(targetBow)})
      const curve = bow.ok ? drawCurve(bow.value) : bow
      const spent = performance.now() - begin
      if (!curve.ok || curve.value.length !== 25) throw new Error("no curve")
      console.log(spent)`
    buildSync({
      stdin: { contents: source, resolveDir: join(import.meta.dirname, "../..") },
      bundle: true,
      format: "esm",
      platform: "node",
      outfile: script,
      logLevel: "error",
    })
    return Array.from({ length: COLD_RUNS }, () =>
      Number(execFileSync(process.execPath, [script], { encoding: "utf8" })),
    )
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

export async function run(): Promise<Ratio[]> {
  // At 1e-10 odex leaves a closing error of 1e-10; ours is below 1e-12 on every state.
  const tolerance = 1e-10
  const own = medianMs(ours(limbs))
  const other = medianMs(theirs(limbs, tolerance))
  const cold = coldRuns().sort((a, b) => a - b)
  const [quickest, median] = [cold[0], cold[Math.floor(COLD_RUNS / 2)]] as [number, number]
  // A bow not met before each time: what its ends say is kept by the bow.
  const sensitivities = medianMs(() => limbSensitivities({ ...limbs }, limbs.full))
  return [
    {
      what: "limb at a new draw length",
      ratio: own / other,
      against: "odex shooting the same limb at 1e-10",
      detail: `${own.toFixed(3)} ms to ${other.toFixed(3)} ms; below 1 is faster`,
    },
    {
      what: "cold 25-point draw curve, stringing included",
      ratio: quickest / COLD_BUDGET_MS,
      against: `${COLD_BUDGET_MS} ms`,
      detail: `quickest of ${COLD_RUNS} processes ${quickest.toFixed(1)} ms, median ${median.toFixed(1)} ms; below 1 is within`,
    },
    {
      what: "all sensitivities of a limb",
      ratio: sensitivities / own,
      against: "one new draw length",
      detail: `${sensitivities.toFixed(3)} ms for 12 parameters to ${own.toFixed(3)} ms`,
    },
  ]
}
