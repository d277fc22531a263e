import type { Result } from "../scene/errors"
import { type Kit, kitTable, piecesIn, serializeKit } from "../scene/kit"
import type { Bench } from "../state/bench"
import { kitFrom } from "./kitFile"
import { kitBench } from "./keptKit"
import { download, fileNameFor, withJson } from "./saveFile"

/** Puts a kit's file into the box; a bad one is explained and leaves the box as it is. */
export function openKitText(bench: Bench, name: string, text: string): Kit | null {
  return openKit(bench, kitFrom(name, text), name, /\.json$/i.test(name) ? name : null)
}

/** The same for a file that came in from anywhere on the page: says where it has gone, which may be out of sight. */
export function openDroppedKit(bench: Bench, name: string, text: string): void {
  const kit = openKitText(bench, name, text)
  if (kit === null) return
  const words = `The kit “${kit.name || name}” is in the box on the Find sheet: ${piecesIn(kit)} pieces.`
  bench.setView({ notice: { tone: "info", text: words, errors: [] } })
}

const NOT_OPENED = "was not opened; the box is as it was."

/** Puts what was read into the box. `called` is what the coach knows it by; `fileName` what it is saved as. */
export function openKit(bench: Bench, read: Result<Kit>, called: string, fileName: string | null): Kit | null {
  if (!read.ok) {
    const text = `The kit “${called}” ${NOT_OPENED}`
    bench.setView({ notice: { tone: "problem", text, errors: read.errors } })
    return null
  }
  const kit = read.value
  kitBench().box.open(kit, fileName)
  // What was said of a kit that would not open is over with one that does.
  const { notice } = bench.store.getState()
  if (notice?.tone === "problem" && notice.text.endsWith(NOT_OPENED)) bench.setView({ notice: null })
  bench.say(`The kit “${kit.name || called}” is in the box: ${piecesIn(kit)} pieces`)
  return kit
}

/** Lets the coach pick a kit's file. */
export function pickKit(bench: Bench): void {
  const input = document.createElement("input")
  input.type = "file"
  input.accept = ".json,.csv,.tsv,application/json,text/csv"
  input.addEventListener("change", async () => {
    const file = input.files?.[0]
    if (file === undefined) return
    try {
      openKitText(bench, file.name, await file.text())
    } catch {
      bench.setView({ notice: { tone: "problem", text: `“${file.name}” could not be read.`, errors: [] } })
    }
  })
  input.click()
}

/** Hands the kit over as a file, or as a table. */
export function saveKit(bench: Bench, as: "json" | "csv"): void {
  const { kit, fileName } = kitBench().box.store.getState()
  const base = fileName ?? fileNameFor(kit.name)
  const name = as === "json" ? withJson(base) : base.replace(/(\.json)?$/i, ".csv")
  try {
    if (as === "json") download(name, serializeKit(kit), "application/json")
    else download(name, kitTable(kit), "text/csv;charset=utf-8")
    bench.say(`Saved as ${name}`)
  } catch (problem) {
    const text = `The kit was not saved: ${problem instanceof Error ? problem.message : String(problem)}`
    bench.setView({ notice: { tone: "problem", text, errors: [] } })
  }
}
