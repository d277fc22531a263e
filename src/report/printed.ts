import type { Outcome } from "./run"

/** Writes out what a command leaves behind. */
export function printed({ output, errors, status }: Outcome): void {
  // A reader that stops early, such as `head`, is no error.
  process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
    if (problem.code !== "EPIPE") throw problem
  })
  // The status is set rather than exited with, so that both streams are written out first.
  process.exitCode = status
  process.stdout.write(output)
  process.stderr.write(errors)
}
