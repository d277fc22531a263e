/**
 * `npm run bench`: runs every tests/bench/*.bench.ts, one after the other so that none disturbs another, and prints
 * one table of their ratios. Each exports `run(): Promise<Ratio[]>`. A folder given as argument is used instead.
 */
import { readdirSync } from "node:fs"
import { join, resolve } from "node:path"
import { pathToFileURL } from "node:url"

export interface Ratio {
  /** What was timed or weighed. */
  readonly what: string
  /** How it stands to the other; below or above 1 as the detail says. */
  readonly ratio: number
  /** What it is held against. */
  readonly against: string
  /** The two figures with their units. */
  readonly detail: string
}

/** The table as lines: a header, then a row for each ratio, columns aligned. */
export function table(ratios: readonly Ratio[]): string[] {
  const rows = [
    ["what", "ratio", "against", "detail"],
    ...ratios.map(({ what, ratio, against, detail }) => [what, ratio.toPrecision(3), against, detail]),
  ]
  const width = (column: number) => Math.max(...rows.map((row) => row[column]!.length))
  const widths = [width(0), width(1), width(2)]
  return rows.map(([what, ratio, against, detail]) =>
    [what!.padEnd(widths[0]!), ratio!.padStart(widths[1]!), against!.padEnd(widths[2]!), detail].join("  "),
  )
}

/** Runs the benches of a folder. @throws Error when it holds none or one exports no `run`, and what a bench throws. */
export async function runBenches(folder: string): Promise<Ratio[]> {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith(".bench.ts"))
    .sort()
  if (files.length === 0) throw new Error(`${folder} holds no *.bench.ts`)
  const ratios: Ratio[] = []
  for (const file of files) {
    const bench: { run?: () => Promise<Ratio[]> } = await import(pathToFileURL(join(folder, file)).href)
    if (typeof bench.run !== "function") throw new Error(`${file} exports no run()`)
    ratios.push(...(await bench.run()))
  }
  return ratios
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    const folder = resolve(process.argv[2] ?? join(import.meta.dirname, "../bench"))
    for (const line of table(await runBenches(folder))) console.log(line)
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem)
    process.exitCode = 1
  }
}
