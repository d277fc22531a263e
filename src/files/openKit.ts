import type { Result } from "../scene/errors"
import { type Kit, kitTable, piecesIn, serializeKit } from "../scene/kit"
import type { Bench, Notice } from "../state/bench"
import { files } from "../words/files"
import { kitFiles as words } from "../words/kitFiles"
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
  bench.setView({
    notice: { tone: "info", text: words.onFindSheet(kit.name || name, piecesIn(kit)), errors: [] },
  })
}

/** What was last said of a kit that would not open. */
let refusal: Notice | null = null

/** Puts what was read into the box. `called` is what the coach knows it by; `fileName` what it is saved as. */
export function openKit(bench: Bench, read: Result<Kit>, called: string, fileName: string | null): Kit | null {
  if (!read.ok) {
    refusal = { tone: "problem", text: words.notOpened(called), errors: read.errors }
    bench.setView({ notice: refusal })
    return null
  }
  const kit = read.value
  kitBench().box.open(kit, fileName)
  // It is over with one that does.
  if (refusal !== null && bench.store.getState().notice === refusal) bench.setView({ notice: null })
  bench.say(words.inBox(kit.name || called, piecesIn(kit)))
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
      bench.setView({ notice: { tone: "problem", text: files.unread(file.name), errors: [] } })
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
    bench.say(files.savedAs(name))
  } catch (problem) {
    const text = words.notSaved(problem instanceof Error ? problem.message : String(problem))
    bench.setView({ notice: { tone: "problem", text, errors: [] } })
  }
}
