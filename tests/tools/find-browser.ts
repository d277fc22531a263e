import { execFileSync, spawnSync } from "node:child_process"
import { accessSync, constants, existsSync } from "node:fs"
import { delimiter, join } from "node:path"
import { chromium } from "@playwright/test"

const systemNames = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "microsoft-edge"]
const systemPlaces = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
]

/** Playwright's download hangs where there is no open network; a working one takes well under this. */
const downloadLimitMs = 180_000
/** apt on a slow mirror; 25 s was seen on a quick one. */
const installLimitMs = 300_000

export interface Surroundings {
  readonly env: Readonly<Record<string, string | undefined>>
  /** Where Playwright keeps its own browser, whether or not it is there. */
  readonly ownPath: string
  /** True for a program that is there and answers. */
  readonly works: (path: string) => boolean
  /** Runs an installing command; its failure shows in nothing being found afterwards. */
  readonly install: (command: string, args: readonly string[], limitMs: number) => void
  readonly isRoot: boolean
}

/** A file that may be run and, on Linux, answers `--version`: some systems ship a placeholder that only says sorry. */
function works(path: string): boolean {
  try {
    accessSync(path, constants.X_OK)
  } catch {
    return false
  }
  if (process.platform !== "linux") return true
  return spawnSync(path, ["--version"], { stdio: "ignore", timeout: 20_000 }).status === 0
}

function install(command: string, args: readonly string[], limitMs: number): void {
  console.error(`No browser for the tests yet; trying: ${command} ${args.join(" ")}`)
  try {
    execFileSync(command, [...args], { stdio: ["ignore", 2, 2], timeout: limitMs })
  } catch (problem) {
    console.error(`That did not work: ${problem instanceof Error ? problem.message.split("\n")[0] : problem}`)
  }
}

export const here = (): Surroundings => ({
  env: process.env,
  ownPath: chromium.executablePath(),
  works,
  install,
  isRoot: process.getuid?.() === 0,
})

function onPath(env: Surroundings["env"]): string[] {
  const folders = (env.PATH ?? "").split(delimiter).filter(Boolean)
  return systemNames.flatMap((name) => folders.map((folder) => join(folder, name)))
}

/**
 * The Chromium the browser tests drive: CHROMIUM_PATH if set, else Playwright's own, else the system's, else one
 * downloaded by Playwright, else one installed by apt where that is allowed.
 *
 * @returns the absolute path of a program that answers
 * @throws Error saying what was looked for and what to do; also when CHROMIUM_PATH is set but does not work, since
 *   quietly testing in another browser than the one asked for would mislead
 */
export function findBrowser(surroundings: Surroundings = here()): string {
  const { env, ownPath, isRoot } = surroundings
  const chosen = env.CHROMIUM_PATH
  if (chosen) {
    if (surroundings.works(chosen)) return chosen
    throw new Error(`CHROMIUM_PATH is "${chosen}", which is not a program that runs here.`)
  }
  const look = () => [ownPath, ...onPath(env), ...systemPlaces].find((path) => surroundings.works(path))

  const present = look()
  if (present) return present

  const playwright = join(import.meta.dirname, "../../node_modules/@playwright/test/cli.js")
  surroundings.install(process.execPath, [playwright, "install", "chromium"], downloadLimitMs)
  const downloaded = look()
  if (downloaded) return downloaded

  if (isRoot && (env.PATH ?? "").split(delimiter).some((folder) => existsSync(join(folder, "apt-get")))) {
    surroundings.install("apt-get", ["update"], installLimitMs)
    surroundings.install("apt-get", ["install", "-y", "chromium"], installLimitMs)
    const installed = look()
    if (installed) return installed
  }
  throw new Error(
    "The browser tests need Chromium and none was found: not in CHROMIUM_PATH, not Playwright's own, not the " +
      "system's; downloading one did not work either. Install Chromium, or set CHROMIUM_PATH to a Chromium program.",
  )
}
