import { openScene } from "../commands/bench"
import type { Bench } from "../state/bench"

/** Far above any scene; keeps a film dropped by mistake from being read into memory. */
const MAX_BYTES = 2_000_000

/** Opens a file the coach picked or dropped. A bad one is explained and leaves the bench as it is. */
export async function openFile(bench: Bench, file: File): Promise<void> {
  const refuse = (text: string, errors: readonly { code: "syntax"; path: string; message: string }[] = []) =>
    bench.setView({ notice: { tone: "problem", text, errors } })
  if (file.size > MAX_BYTES) {
    refuse(`“${file.name}” was not opened: it is ${Math.round(file.size / 1e6)} MB, a scene file is far below 2 MB.`)
    return
  }
  let text: string
  try {
    text = await file.text()
  } catch {
    refuse(`“${file.name}” could not be read.`)
    return
  }
  const reader = await import("../scene/parse").catch(() => null)
  if (reader === null) {
    refuse(
      `“${file.name}” was not opened: the part of the page that reads files could not be fetched. Is the network there?`,
    )
    return
  }
  const parsed = reader.parseScene(text)
  const opened = parsed.ok ? openScene.run(bench, { scene: parsed.value, fileName: file.name, saved: true }) : parsed
  if (opened.ok) {
    bench.setView({ notice: null })
    bench.say(`Opened ${file.name}`)
    return
  }
  bench.setView({
    notice: {
      tone: "problem",
      text: `“${file.name}” was not opened; the bench is as it was.`,
      errors: opened.errors,
    },
  })
}

/** Lets the coach pick a file. */
export function pickFile(bench: Bench): void {
  const input = document.createElement("input")
  input.type = "file"
  input.accept = ".json,application/json"
  input.addEventListener("change", () => {
    const file = input.files?.[0]
    if (file !== undefined) void openFile(bench, file)
  })
  input.click()
}
