import { reportText } from "../describe/reportText"
import { errorLine } from "../scene/errors"
import { type MeasureResult, measuredReport, measureResult } from "../scene/measure"
import { parseScene } from "../scene/parse"
import { type Report, reportOf } from "../scene/sweeps"
import type { Evaluation } from "../scene/evaluate"
import { type Request, readArguments, usage } from "./arguments"
import type { FileText } from "./readText"

/** What a run leaves behind: the two streams' text and the exit status. */
export interface Outcome {
  readonly output: string
  readonly errors: string
  readonly status: 0 | 2
}

interface Sheet {
  readonly file: string
  readonly evaluation: Evaluation
  readonly report: Report
  readonly measured: MeasureResult | null
}

/**
 * The report command without its process: `words` are the arguments, `read` fetches a file. All or nothing: one bad
 * file among many and no sheet is printed, only every reason, each as `FILE: path: reason`.
 */
export function run(words: readonly string[], read: (file: string) => FileText): Outcome {
  const asked = readArguments(words)
  if (asked.kind === "help") return { output: usage, errors: "", status: 0 }
  if (asked.kind === "wrong") return { output: "", errors: `${printable(asked.reason)}\n\n${usage}`, status: 2 }
  const sheets: Sheet[] = []
  const errors: string[] = []
  for (const file of asked.request.files) {
    const made = sheetOf(file, asked.request, read)
    if ("reasons" in made) errors.push(...made.reasons.map((reason) => printable(`${file}: ${reason}`)))
    else sheets.push(made)
  }
  if (errors.length > 0) return { output: "", errors: `${errors.join("\n")}\n`, status: 2 }
  return { output: asked.request.json ? json(sheets) : sheets.map(reportText).join("\n\n"), errors: "", status: 0 }
}

function sheetOf(file: string, { pose }: Request, read: (file: string) => FileText): Sheet | { reasons: string[] } {
  const found = read(file)
  if (!found.ok) return { reasons: [found.reason] }
  const scene = parseScene(found.text)
  if (!scene.ok) return { reasons: scene.errors.map(errorLine) }
  const made = reportOf({ ...scene.value, pose: { ...scene.value.pose, ...pose } })
  if (!made.ok) return { reasons: made.errors.map(errorLine) }
  const measured = measureResult(made.value.evaluation.scene)
  if (measured !== null && !measured.ok) return { reasons: measured.errors.map(errorLine) }
  return { file, ...made.value, measured: measured === null ? null : measured.value }
}

/** One file: the bare object. Several: a list of the same objects, each with its file first. */
function json(sheets: readonly Sheet[]): string {
  const [only] = sheets
  const value =
    sheets.length === 1 ? only && figures(only) : sheets.map((sheet) => ({ file: sheet.file, ...figures(sheet) }))
  return `${JSON.stringify(value, null, 2)}\n`
}

/** The report's figures, with what was measured where something was. */
const figures = ({ report, measured, evaluation }: Sheet) =>
  measured === null ? report : { ...report, measured: measuredReport(evaluation.scene, measured) }

/** A file's own words stay on their line and give the terminal no orders. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what it is about
export const printable = (text: string): string => text.replace(/[\u0000-\u001f\u007f-\u009f]/g, "\ufffd")
