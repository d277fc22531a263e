import { readText } from "./readText"
import { run } from "./run"

// A reader that stops early, such as `head`, is no error.
process.stdout.on("error", (problem: NodeJS.ErrnoException) => {
  if (problem.code !== "EPIPE") throw problem
})

const { output, errors, status } = run(process.argv.slice(2), readText)
// The status is set rather than exited with, so that both streams are written out first.
process.exitCode = status
process.stdout.write(output)
process.stderr.write(errors)
