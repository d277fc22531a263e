import { spawn } from "node:child_process"
import { mkdirSync, readFileSync, rmSync } from "node:fs"
import { dirname, join } from "node:path"
import { honest, lastLine, oneFailed, onePassed, sum, type Tally, tallyPlaywright, tallyVitest } from "./tally"

const root = join(import.meta.dirname, "../..")

export interface Check {
  readonly name: string
  readonly run: () => Promise<Tally>
}

export interface Suite {
  /** Program of a package in node_modules, from there: `vitest/vitest.mjs`. */
  readonly program: string
  readonly args: readonly string[]
  /** Where its JSON report goes, from the project's root. */
  readonly report: string
}

/** Programs started and not yet ended, to be ended with the run. */
const running = new Set<ReturnType<typeof spawn>>()
let stopped = false

/** Ends what runs and lets nothing more start: every check not yet finished fails. */
export function stopPrograms(): void {
  stopped = true
  // As Ctrl+C would: the test programs then close the browsers and servers they have opened.
  for (const program of running) program.kill("SIGINT")
}

/** Runs a program of node with its output shown as it comes. Resolves to whether it exited with 0; never rejects. */
function succeeds(args: readonly string[], env: Record<string, string> = {}, show = true): Promise<boolean> {
  if (stopped) return Promise.resolve(false)
  return new Promise((resolve) => {
    // Standard input is closed: nothing here may wait for an answer.
    const program = spawn(process.execPath, [...args], {
      cwd: root,
      env: { ...process.env, ...env },
      stdio: ["ignore", show ? "inherit" : "ignore", show ? "inherit" : "ignore"],
    })
    running.add(program)
    const end = (success: boolean) => {
      running.delete(program)
      resolve(success)
    }
    program.once("error", (problem) => {
      console.error(problem.message)
      end(false)
    })
    program.once("exit", (code) => end(code === 0))
  })
}

/** A check that is one program or several, each run by node: passed when all exit with 0. */
export function programCheck(name: string, ...commands: readonly (readonly string[])[]): Check {
  return {
    name,
    run: async () => {
      // All of them run, so that one's complaint does not hide the next one's.
      let good = true
      for (const command of commands) good = (await succeeds(command)) && good
      return good ? onePassed : oneFailed
    },
  }
}

async function runSuite<Report>(
  { program, args, report }: Suite,
  env: Record<string, string>,
  tally: (report: Report) => Tally,
  show: boolean,
): Promise<Tally> {
  const file = join(root, report)
  mkdirSync(dirname(file), { recursive: true })
  // Else an earlier run's report would be counted when this one dies before writing its own.
  rmSync(file, { force: true })
  const succeeded = await succeeds([join(root, "node_modules", program), ...args], env, show)
  let counted: Tally
  try {
    counted = tally(JSON.parse(readFileSync(file, "utf8")))
  } catch {
    console.error(`${program} left no readable report`)
    counted = oneFailed
  }
  return honest(counted, succeeded)
}

/** Vitest with its usual output, counted from its JSON report. */
export function runVitest(suite: Omit<Suite, "program">, show = true): Promise<Tally> {
  const args = [
    "run",
    "--reporter=default",
    "--reporter=json",
    `--outputFile.json=${join(root, suite.report)}`,
    ...suite.args,
  ]
  return runSuite({ ...suite, program: "vitest/vitest.mjs", args }, {}, tallyVitest, show)
}

/** Playwright with its usual output, counted from its JSON report. */
export function runPlaywright(suite: Omit<Suite, "program">, show = true): Promise<Tally> {
  const args = ["test", "--reporter=list,json", ...suite.args]
  const env = { PLAYWRIGHT_JSON_OUTPUT_FILE: join(root, suite.report) }
  return runSuite({ ...suite, program: "@playwright/test/cli.js", args }, env, tallyPlaywright, show)
}

/**
 * Runs the checks one after the other, then prints a table of them and the last line.
 *
 * @returns the exit code: 0 when nothing failed, else 1
 */
export async function runChecks(checks: readonly Check[], print: (line: string) => void): Promise<number> {
  const tallies: Tally[] = []
  const rows: string[] = []
  for (const { name, run } of checks) {
    print(`\n${name}`)
    const start = performance.now()
    const tally = await run().catch((problem: unknown) => {
      print(String(problem))
      return oneFailed
    })
    const seconds = ((performance.now() - start) / 1000).toFixed(1)
    tallies.push(tally)
    rows.push(
      `${tally.failed > 0 ? "FAILED" : "ok    "} ${name.padEnd(16)} ${seconds.padStart(6)} s  ${lastLine(tally)}`,
    )
  }
  const all = sum(tallies)
  print("")
  for (const row of rows) print(row)
  print(lastLine(all))
  return all.failed > 0 ? 1 : 0
}
