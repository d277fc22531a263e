/**
 * Searching a kit: a thousand million combinations proved by two threads, and one best setup against HiGHS, a
 * mixed-integer solver, on the same question written as a linear programme.
 */
import { mkdtempSync, readFileSync, rmSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { pathToFileURL } from "node:url"
import { build } from "esbuild"
import loadHighs from "highs"
import { combinations, type FindProblem, searchWhole } from "../../src/core/find"
import { threads } from "../../src/report/find/threads"
import { type Asked, type FindQuestion, type Outcome, questionFor, setupSpace, startFind } from "../../src/scene/find"
import { type Kit, parseKit } from "../../src/scene/kit"
import { parseScene } from "../../src/scene/parse"
import type { Ratio } from "../tools/bench"
import { linearProgramme } from "./linearProgramme"

const root = join(import.meta.dirname, "../..")
/** What proving a thousand million combinations may take on two cores, s. */
const BUDGET = 2
const THREADS = 2

function needed<T>(result: { ok: true; value: T } | { ok: false }): T {
  if (!result.ok) throw new Error(JSON.stringify(result))
  return result.value
}

const read = (file: string) => readFileSync(join(root, "scenes", file), "utf8")

/** The club's box with the V-bar in steps of `stepDeg`, both arms free, on the target recurve. */
function question(stepDeg: number, more: Partial<FindQuestion>): Asked {
  const scene = needed(parseScene(read("target-recurve-straight-bar.json")))
  const box = needed(parseKit(read("kits/target-club-box.json")))
  const coarser = ({ from, to }: { from: number; to: number }) => ({ from, to, step: stepDeg })
  const vbars = box.vbars.map((vbar) => ({
    ...vbar,
    splayDeg: coarser(vbar.splayDeg),
    droopDeg: coarser(vbar.droopDeg),
  }))
  const kit: Kit = { ...box, vbars }
  return { scene, kit, question: { ...questionFor(scene), arms: "free", ...more } }
}

export async function run(): Promise<Ratio[]> {
  return [...(await proved()), await againstHighs()]
}

async function proved(): Promise<Ratio[]> {
  const folder = mkdtempSync(join(tmpdir(), "find-bench-"))
  try {
    const outfile = join(folder, "find.mjs")
    const entryPoints = [join(root, "src/report/find/main.ts")]
    await build({ entryPoints, outfile, bundle: true, platform: "node", target: "node20", format: "esm" })
    const spawn = threads(pathToFileURL(outfile))
    const rows: Ratio[] = []
    for (const score of ["nearest", "lightest", "steadiest", "steadyForMass"] as const) {
      const asked = question(10, { score, mostDiscs: 5 })
      const before = process.cpuUsage()
      const begin = performance.now()
      const outcome = await new Promise<Outcome>((resolve) => {
        startFind(asked, THREADS, spawn, () => {}, resolve)
      })
      const seconds = (performance.now() - begin) / 1000
      const { user, system } = process.cpuUsage(before)
      if (outcome.kind !== "searched" || !outcome.proved) throw new Error(`${score}: not proved`)
      if (outcome.combinations < 1e9) throw new Error(`only ${outcome.combinations} combinations`)
      rows.push({
        what: `find, ${score}: ${outcome.combinations.toExponential(1)} combinations proved`,
        ratio: seconds / BUDGET,
        against: `budget of ${BUDGET} s, ${THREADS} threads`,
        detail: `${seconds.toFixed(2)} s, ${((user + system) / 1e6).toFixed(2)} s of processors, threads' start in; below 1 is within`,
      })
    }
    return rows
  } finally {
    rmSync(folder, { recursive: true })
  }
}

/** The lightest setup that turns as hard as asked: linear in everything, so that a linear solver can be asked too. */
async function againstHighs(): Promise<Ratio> {
  const asked = question(20, { score: "lightest", count: 1, mostDiscs: 3 })
  const target = { ...asked.question.target, pitchLeast: 0.3, yawLeast: 0.15 }
  const { scene, kit } = asked
  // Without dampers and with one extender HiGHS takes seconds and not minutes.
  const small = { ...kit, dampers: [], extenders: kit.extenders.slice(0, 1) }
  const { problem } = needed(setupSpace(scene, small, { ...asked.question, target }))
  const begin = performance.now()
  const [found] = searchWhole(problem).found
  const mine = performance.now() - begin
  const { ms, mass } = await solved(problem)
  const best = (found?.first ?? Number.NaN) * 1e-9
  if (!(Math.abs(best - mass) < 1e-6)) throw new Error(`the optimum is ${best} kg here, ${mass} kg by HiGHS`)
  return {
    what: `find, lightest of ${combinations(problem).toExponential(1)} combinations`,
    ratio: mine / ms,
    against: "HiGHS on the same question",
    detail: `${mine.toFixed(0)} ms to ${ms.toFixed(0)} ms, both ${mass.toFixed(4)} kg; below 0.05 is 20 times faster`,
  }
}

async function solved(problem: FindProblem): Promise<{ ms: number; mass: number }> {
  const highs = await loadHighs()
  const programme = linearProgramme(problem)
  const begin = performance.now()
  const result = highs.solve(programme.text, { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-9 })
  const ms = performance.now() - begin
  if (result.Status !== "Optimal") throw new Error(`HiGHS ended with ${result.Status}`)
  return { ms, mass: result.ObjectiveValue + programme.constant }
}
