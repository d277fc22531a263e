import { describe, expect, it, vi } from "vitest"
import { type Check, programCheck, runChecks, runPlaywright, runVitest } from "./checks"
import { honest, lastLine } from "./tally"

const ending = (name: string, passed: number, failed: number, skipped: number): Check => ({
  name,
  run: async () => ({ passed, failed, skipped }),
})

async function linesOf(checks: readonly Check[]): Promise<{ code: number; lines: string[] }> {
  const lines: string[] = []
  const code = await runChecks(checks, (line) => lines.push(line))
  return { code, lines }
}

describe("running all checks", () => {
  it("adds every suite into the last line and succeeds when nothing failed", async () => {
    const { code, lines } = await linesOf([ending("first", 2, 0, 0), ending("second", 5, 0, 0)])
    expect(lines.at(-1)).toBe("7 passed, 0 failed")
    expect(code).toBe(0)
  })

  it("shows skipped tests in the last line", async () => {
    const { lines } = await linesOf([ending("first", 2, 0, 3), ending("second", 5, 0, 4)])
    expect(lines.at(-1)).toBe("7 passed, 0 failed, 7 skipped")
  })

  it("fails, after running the rest, when one test failed", async () => {
    const { code, lines } = await linesOf([ending("first", 2, 1, 0), ending("second", 5, 0, 0)])
    expect(lines.at(-1)).toBe("7 passed, 1 failed")
    expect(code).toBe(1)
  })

  it("counts a check that breaks down as one failure", async () => {
    const broken: Check = { name: "broken", run: () => Promise.reject(new Error("planted")) }
    const { code, lines } = await linesOf([broken, ending("second", 5, 0, 0)])
    expect(lines).toContain("Error: planted")
    expect(lines.at(-1)).toBe("5 passed, 1 failed")
    expect(code).toBe(1)
  })

  it("counts a program by its exit code, a whole check being one", async () => {
    expect(await programCheck("good", ["-e", ""], ["-e", ""]).run()).toEqual({ passed: 1, failed: 0, skipped: 0 })
    expect(await programCheck("bad", ["-e", "process.exit(3)"], ["-e", ""]).run()).toEqual({
      passed: 0,
      failed: 1,
      skipped: 0,
    })
  })

  it("counts a program that is killed as failed", async () => {
    const killed = programCheck("killed", ["-e", "process.kill(process.pid, 'SIGKILL')"])
    expect((await killed.run()).failed).toBe(1)
  })
})

describe("counting a suite", () => {
  it("takes a program's failure for a failure although its report names none", () => {
    expect(honest({ passed: 5, failed: 0, skipped: 0 }, false)).toEqual({ passed: 5, failed: 1, skipped: 0 })
  })

  it("takes a suite in which nothing ran for a failure", () => {
    expect(honest({ passed: 0, failed: 0, skipped: 3 }, true)).toEqual({ passed: 0, failed: 1, skipped: 3 })
  })

  it("leaves a named failure as it is", () => {
    expect(honest({ passed: 5, failed: 2, skipped: 3 }, false)).toEqual({ passed: 5, failed: 2, skipped: 3 })
  })

  it("reads vitest's own report: passed, failed, skipped, put off, and a file that does not load", async () => {
    const tally = await runVitest(
      { args: ["--config", "tests/tools/planted/vitest.config.ts"], report: "test-results/planted-unit.json" },
      false,
    )
    expect(lastLine(tally)).toBe("2 passed, 2 failed, 2 skipped")
  })

  it("reads Playwright's own report: passed, failed, failed as foreseen, skipped", async () => {
    const tally = await runPlaywright(
      { args: ["--config", "tests/tools/planted/playwright.config.ts"], report: "test-results/planted-browser.json" },
      false,
    )
    expect(lastLine(tally)).toBe("2 passed, 1 failed, 1 skipped")
  })

  it("takes a suite that leaves no report for a failure, not for the last run's result", async () => {
    const suite = { args: ["--config", "tests/tools/planted/none.config.ts"], report: "test-results/planted-none.json" }
    const said = vi.spyOn(console, "error").mockReturnValue()
    expect(lastLine(await runVitest(suite, false))).toBe("0 passed, 1 failed")
    expect(said).toHaveBeenCalledWith("vitest/vitest.mjs left no readable report")
    said.mockRestore()
  })
})
