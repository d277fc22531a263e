/** How many of a suite's tests ended which way. A check that is one program counts as one test. */
export interface Tally {
  readonly passed: number
  readonly failed: number
  readonly skipped: number
}

export const onePassed: Tally = { passed: 1, failed: 0, skipped: 0 }
export const oneFailed: Tally = { passed: 0, failed: 1, skipped: 0 }

export function sum(tallies: readonly Tally[]): Tally {
  return tallies.reduce(
    (all, one) => ({
      passed: all.passed + one.passed,
      failed: all.failed + one.failed,
      skipped: all.skipped + one.skipped,
    }),
    { passed: 0, failed: 0, skipped: 0 },
  )
}

/** The last line of a run: `7 passed, 0 failed`, and `, 2 skipped` when any was. */
export function lastLine({ passed, failed, skipped }: Tally): string {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`
}

/**
 * A suite counts at least one failure when its program failed, whatever its report says, or when nothing ran: a
 * crash between two tests and an empty suite must not look like success.
 */
export function honest(counted: Tally, programSucceeded: boolean): Tally {
  const ranNothing = counted.passed + counted.failed === 0
  const unexplained = counted.failed === 0 && (!programSucceeded || ranNothing)
  return unexplained ? { ...counted, failed: 1 } : counted
}

interface VitestReport {
  readonly testResults: readonly {
    readonly status: string
    readonly assertionResults: readonly { readonly status: string }[]
  }[]
}

/** Counts vitest's JSON report. A file that failed outside its tests (it did not load, a hook threw) is one failure. */
export function tallyVitest(report: VitestReport): Tally {
  return sum(
    report.testResults.map((file) => {
      const count = (...states: string[]) =>
        file.assertionResults.filter(({ status }) => states.includes(status)).length
      const passed = count("passed")
      const failed = count("failed")
      const skipped = file.assertionResults.length - passed - failed
      return { passed, failed: failed === 0 && file.status === "failed" ? 1 : failed, skipped }
    }),
  )
}

interface PlaywrightReport {
  readonly errors: readonly unknown[]
  readonly stats: {
    readonly expected: number
    readonly unexpected: number
    readonly flaky: number
    readonly skipped: number
  }
}

/**
 * Counts Playwright's JSON report. Each error outside tests is a failure. A test that passed only when repeated has
 * passed, on a machine too busy the first time; Playwright lists it as flaky above, for whoever reads to mend.
 */
export function tallyPlaywright({ errors, stats }: PlaywrightReport): Tally {
  return {
    passed: stats.expected + stats.flaky,
    failed: stats.unexpected + errors.length,
    skipped: stats.skipped,
  }
}
