import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { readLesson } from "../../src/clinic/lessons/read"
import type { StagedLesson } from "../../src/clinic/lessons/stage"
import { parseScene } from "../../src/scene/parse"

const scenes = join(import.meta.dirname, "../../scenes")

/** Names of the lessons that come with the bench, as `?lesson=` takes them. */
export const lessonIds = readdirSync(join(scenes, "lessons"))
  .map((name) => name.replace(/\.json$/, ""))
  .sort()

export const lessonText = (id: string): string => readFileSync(join(scenes, "lessons", `${id}.json`), "utf8")

export const sceneFile = async (name: string) => parseScene(readFileSync(join(scenes, `${name}.json`), "utf8"))

export async function shippedLesson(id: string): Promise<StagedLesson> {
  const staged = await readLesson(lessonText(id), sceneFile)
  if (!staged.ok) throw new Error(staged.errors.map(({ path, message }) => `${path}: ${message}`).join("\n"))
  return staged.value
}
