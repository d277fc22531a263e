import { existsSync, readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { readLesson } from "../../src/clinic/lessons/read"
import type { StagedLesson } from "../../src/clinic/lessons/stage"
import { failure, type Result } from "../../src/scene/errors"
import { parseScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import type { Language } from "../../src/words/language"

const scenes = join(import.meta.dirname, "../../scenes")

/** Names of the lessons that come with the bench, as `?lesson=` takes them. */
export const lessonIds = readdirSync(join(scenes, "lessons"))
  .map((name) => name.replace(/\.json$/, ""))
  .sort()

export const lessonText = (id: string): string => readFileSync(join(scenes, "lessons", `${id}.json`), "utf8")

/** A shipped scene by its name, as the page would fetch it. */
export async function sceneFile(name: string): Promise<Result<Scene>> {
  const file = join(scenes, `${name}.json`)
  return existsSync(file)
    ? parseScene(readFileSync(file, "utf8"))
    : failure({ code: "not-a-scene", path: "", message: `scene "${name}" does not come with the bench` })
}

export async function shippedLesson(id: string, reading: Language = "en"): Promise<StagedLesson> {
  const staged = await readLesson(lessonText(id), sceneFile, reading)
  if (!staged.ok) throw new Error(staged.errors.map(({ path, message }) => `${path}: ${message}`).join("\n"))
  return staged.value
}
