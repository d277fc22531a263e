import { openScene } from "../commands/bench"
import { compareWith } from "../commands/compare"
import type { Result } from "../scene/errors"
import type { Scene } from "../scene/schema"
import type { Bench } from "../state/bench"
import { files } from "../words/files"
import { localNumber } from "../words/numbers"

/** Far above any scene; keeps a film dropped by mistake from being read into memory. */
const MAX_BYTES = 2_000_000

/** What is done with a scene that was read. */
type Use = (scene: Scene) => Result<void>

/** Opens a file the coach picked or dropped. A bad one is explained and leaves the bench as it is. */
export const openFile = (bench: Bench, file: File): Promise<void> =>
  takeFile(bench, file, "opened", (scene) => openScene.run(bench, { scene, fileName: file.name, saved: true }))

/** Holds a file's setup beside the one on the bench. A bad one is explained and changes nothing. */
export const compareFile = (bench: Bench, file: File): Promise<void> =>
  takeFile(bench, file, "compared", (scene) => compareWith.run(bench, { name: scene.name, scene }))

async function takeFile(bench: Bench, file: File, done: "opened" | "compared", use: Use): Promise<void> {
  const words = done === "opened" ? files.toOpen : files.toCompare
  const refuse = (text: string) => bench.setView({ notice: { tone: "problem", text, errors: [] } })
  if (file.size > MAX_BYTES) {
    refuse(words.tooBig(file.name, localNumber(String(Math.round(file.size / 1e6)))))
    return
  }
  let text: string
  try {
    text = await file.text()
  } catch {
    refuse(files.unread(file.name))
    return
  }
  const reader = await import("./fileReader").catch(() => null)
  if (reader === null) {
    refuse(words.readerAway(file.name))
    return
  }
  if (done === "opened" && (await reader.openedAsKit(bench, file.name, text).catch(() => false))) return
  if (done === "opened" && reader.openedAsLesson(bench, file.name, text)) return
  const parsed = reader.parseScene(text)
  const used = parsed.ok ? use(parsed.value) : parsed
  if (used.ok) {
    bench.setView({ notice: null })
    if (done === "opened") bench.say(files.opened(file.name))
    return
  }
  bench.setView({
    notice: { tone: "problem", text: words.wrong(file.name), errors: used.errors },
  })
}

/** Lets the coach pick a file to open. */
export const pickFile = (bench: Bench): void => pick((file) => openFile(bench, file))

/** Lets the coach pick a file to compare with. */
export const pickOther = (bench: Bench): void => pick((file) => compareFile(bench, file))

function pick(then: (file: File) => Promise<void>): void {
  const input = document.createElement("input")
  input.type = "file"
  input.accept = ".json,application/json"
  input.addEventListener("change", () => {
    const file = input.files?.[0]
    if (file !== undefined) void then(file)
  })
  input.click()
}
