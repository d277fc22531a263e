import { type FileText, fileText } from "../describe/fileText"
import { failure, type Result, success } from "../scene/errors"
import { files } from "../words/files"

const words = files.lesson

export interface ShippedLesson {
  /** File name in `scenes/lessons/`, without `.json`: what `?lesson=` takes. */
  readonly id: string
  readonly name: string
  /** What it is about, in one sentence. */
  readonly about: string
}

/** The lessons that come with the page. Rejects when they cannot be fetched. */
export async function shippedLessons(): Promise<readonly ShippedLesson[]> {
  const response = await fetch("scenes/lessons/index.json")
  if (!response.ok) throw new Error(`the list of lessons did not come (${response.status})`)
  return ((await response.json()) as { file: string; name: FileText; about?: FileText }[]).map(
    ({ file, name, about = "" }) => ({ id: file.replace(/\.json$/, ""), name: fileText(name), about: fileText(about) }),
  )
}

/** The text of one shipped lesson by its name in `scenes/lessons/`. Never rejects. */
export async function fetchLesson(id: string): Promise<Result<string>> {
  const missing = (why: (id: string) => string) => failure({ code: "not-a-scene", path: "", message: why(id) })
  if (!/^[\w-]+$/.test(id)) return missing(words.noName)
  try {
    const response = await fetch(`scenes/lessons/${id}.json`)
    return response.ok ? success(await response.text()) : missing(words.unknown)
  } catch {
    return missing(words.away)
  }
}
