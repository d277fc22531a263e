import { failure, pathText, type Result, type SceneError } from "../../scene/errors"
import { readScene } from "../../scene/parse"
import type { Scene } from "../../scene/schema"
import { lessonFaults } from "../../words/lessonFaults"
import { type Language, language } from "../../words/language"
import { parseLesson } from "./parse"
import { type StagedLesson, stageLesson } from "./stage"

/** One for each step, and room to spare: more would only keep the page busy. */
const MAX_SCENES = 24

/**
 * A lesson from the text of a file, ready to be shown.
 *
 * @param shipped brings a scene that comes with the bench by its name
 * @param reading the language of the words that are shown; all that the file has are held to the numbers
 */
export async function readLesson(
  text: string,
  shipped: (name: string) => Promise<Result<Scene>>,
  reading: Language = language,
): Promise<Result<StagedLesson>> {
  const lesson = parseLesson(text)
  if (!lesson.ok) return lesson
  const named = Object.entries(lesson.value.scenes)
  if (named.length > MAX_SCENES) {
    const message = lessonFaults.manyScenes(String(named.length), String(MAX_SCENES))
    return failure({ code: "not-allowed", path: "scenes", message })
  }
  const scenes = new Map<string, Scene>()
  const errors: SceneError[] = []
  for (const [name, given] of named) {
    const scene = typeof given === "string" ? await shipped(given) : readScene(given)
    if (scene.ok) scenes.set(name, scene.value)
    else errors.push(...scene.errors.map((error) => ({ ...error, path: placed(name, error.path) })))
  }
  return errors.length > 0 ? failure(...errors) : stageLesson(lesson.value, scenes, reading)
}

const placed = (name: string, path: string): string => pathText(["scenes", name, ...(path === "" ? [] : [path])])
