/** `npm test`: every check there is, once, with one last line that counts them all. */
import { join } from "node:path"
import { programCheck, runChecks, runPlaywright, runVitest, stopPrograms } from "./checks"
import { endWithNpm } from "./end-with-npm"

const root = join(import.meta.dirname, "../..")
const inModules = (path: string) => join(root, "node_modules", path)
const tool = (name: string) => ["--import", "tsx", join(import.meta.dirname, name)]

// An interrupted run ends its programs; what they had not finished then counts as failed and is said as usual.
for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, stopPrograms)
endWithNpm(stopPrograms)

process.exitCode = await runChecks(
  [
    programCheck("types", [inModules("typescript/bin/tsc"), "--noEmit"]),
    programCheck(
      "lint",
      [inModules("@biomejs/biome/bin/biome"), "check", "--error-on-warnings", "."],
      tool("import-direction.ts"),
      tool("stray-words.ts"),
    ),
    { name: "unit", run: () => runVitest({ args: [], report: "test-results/unit.json" }) },
    programCheck("build", tool("build.ts")),
    { name: "browser", run: () => runPlaywright({ args: [], report: "test-results/browser.json" }) },
  ],
  console.log,
)
