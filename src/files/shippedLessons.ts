import { type FileText, fileText } from "../describe/fileText"
import { failure, type Result, success } from "../scene/errors"

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
  const missing = (why: string) => failure({ code: "not-a-scene", path: "", message: `lesson "${id}" ${why}` })
  if (!/^[\w-]+$/.test(id)) return missing("is not the name of a lesson that comes with the bench")
  try {
    const response = await fetch(`scenes/lessons/${id}.json`)
    return response.ok ? success(await response.text()) : missing("does not come with the bench")
  } catch {
    return missing("could not be fetched; is the network there?")
  }
}
