import type { Scene } from "../scene/schema"
import type { Bench } from "../state/bench"
import { files } from "../words/files"

/** A name that every file system takes, from what the coach called the setup. */
export function fileNameFor(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-/, "")
    .slice(0, 80)
    .replace(/-$/, "")
  return `${plain === "" ? files.unnamed : plain}.json`
}

/** `name` with `.json` at its end and nothing printable that a file system refuses. */
export function withJson(name: string): string {
  const base = name.trim().replace(/[\\/:*?"<>|]/g, "-")
  if (base === "") return fileNameFor("")
  return base.toLowerCase().endsWith(".json") ? base : `${base}.json`
}

/** Hands the scene over as a file, under its own name or `fileName`, and marks it saved. */
export async function saveFile(bench: Bench, fileName?: string): Promise<void> {
  const serializeScene = await fileWriter()
  // Read after waiting: what is handed over is what is then marked as saved.
  const { scene, fileName: known } = bench.store.getState()
  const name = withJson(fileName ?? known ?? fileNameFor(scene.name))
  download(name, serializeScene(scene), "application/json")
  bench.markSaved(name)
  bench.say(files.savedAs(name))
}

/** The file's own layout; where that cannot be fetched any more, plain JSON, which opens just as well. */
async function fileWriter(): Promise<(scene: Scene) => string> {
  try {
    return (await import("../scene/serialize")).serializeScene
  } catch {
    return (scene) => `${JSON.stringify(scene, null, 2)}\n`
  }
}

/** Gives the browser a text, or bytes, to keep as a file. */
export function download(name: string, content: BlobPart, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }))
  const link = document.createElement("a")
  link.href = address
  link.download = name
  link.click()
  // The click has been taken when the task ends; some browsers read the blob a little later.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
