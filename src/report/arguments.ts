import { type NumberField, poseFields } from "../scene/fields"
import type { Pose } from "../scene/schema"
import { rangeText } from "../scene/units"
import { decimal, givenText, readWords } from "./words"

export const usage = `Usage: npm run -s report -- FILE... [--draw T] [--slope DEG] [--cant DEG] [--json]

Prints the balance sheet of each scene file.
  --draw T      hold it drawn: 0 is brace height, 1 full draw   (${rangeOf(poseFields.draw)})
  --slope DEG   raise the front, or lower it when negative      (${rangeOf(poseFields.slopeDeg)})
  --cant DEG    lean the top to the right, or left if negative  (${rangeOf(poseFields.cantDeg)})
  --json        print the figures as JSON: one object, or for several files a list of objects that begin with "file"
What is not given is taken from the scene's own pose. Exit status: 0, or 2 when anything is wrong, with the reason
on standard error and nothing else printed.
`

export interface Request {
  readonly files: readonly string[]
  readonly json: boolean
  /** What replaces the scene's own pose. */
  readonly pose: Partial<Pose>
}

export type Asked =
  | { readonly kind: "report"; readonly request: Request }
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly reason: string }

const poseFlags: Readonly<Record<string, { key: keyof Pose; field: NumberField }>> = {
  "--draw": { key: "draw", field: poseFields.draw },
  "--slope": { key: "slopeDeg", field: poseFields.slopeDeg },
  "--cant": { key: "cantDeg", field: poseFields.cantDeg },
}

/** Reads the words after `report`; see `readWords`. */
export function readArguments(words: readonly string[]): Asked {
  const pose: Partial<Record<keyof Pose, number>> = {}
  const read = readWords(words, (name) => {
    const flag = Object.hasOwn(poseFlags, name) ? poseFlags[name] : undefined
    if (flag === undefined) return undefined
    return (given) => {
      const value = decimal(given)
      if (!(value >= flag.field.min && value <= flag.field.max)) {
        return `${name} needs a number in ${rangeOf(flag.field)}; ${givenText(given)} given`
      }
      pose[flag.key] = value
      return null
    }
  })
  if (read.kind !== "read") return read
  if (read.files.length === 0) return { kind: "wrong", reason: "no scene file is given" }
  return { kind: "report", request: { files: read.files, json: read.json, pose } }
}

function rangeOf(field: NumberField): string {
  return rangeText(field.min, field.max, field.quantity)
}
