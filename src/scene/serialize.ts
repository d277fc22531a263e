import { type Scene, sceneSchema } from "./schema"

/**
 * The text of a scene file: every key, defaults included, always in the format's order, so that saving a loaded
 * file and loading it again gives an equal scene and equal text. Lists of numbers stand on one line.
 */
export function serializeScene(scene: Scene): string {
  const text = JSON.stringify(sceneSchema.parse(scene), null, 2)
  // A raw line break never stands inside a JSON string, so this touches no words of the coach's.
  return `${text.replace(NUMBER_LIST, (list) => list.replace(/\s+/g, " ").replace("[ ", "[").replace(" ]", "]"))}\n`
}

const NUMBER_LIST = /\[\n\s*-?[\d.e+-]+(?:,\n\s*-?[\d.e+-]+)*\n\s*\]/g
