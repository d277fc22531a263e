import { type NumberField, poseFields } from "../scene/fields"
import type { Pose } from "../scene/schema"
import { rangeText } from "../scene/units"

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

/**
 * Reads the words after `report`. Flags and files in any order; `--slope 20` and `--slope=20` both; what follows
 * `--` is a file whatever it looks like. A flag given twice is refused rather than one of them silently lost.
 */
export function readArguments(words: readonly string[]): Asked {
  const files: string[] = []
  const pose: Partial<Record<keyof Pose, number>> = {}
  let json = false
  for (let index = 0; index < words.length; index++) {
    const word = words[index]!
    if (word === "--") {
      files.push(...words.slice(index + 1))
      break
    }
    if (!word.startsWith("-") || word === "-") {
      files.push(word)
      continue
    }
    if (word === "--help" || word === "-h") return { kind: "help" }
    if (word === "--json") {
      json = true
      continue
    }
    const equals = word.indexOf("=")
    const name = equals < 0 ? word : word.slice(0, equals)
    const flag = Object.hasOwn(poseFlags, name) ? poseFlags[name] : undefined
    if (flag === undefined) return wrong(`unknown option ${name}`)
    if (pose[flag.key] !== undefined) return wrong(`${name} is given twice`)
    const given = equals < 0 ? words[++index] : word.slice(equals + 1)
    const value = numberIn(flag.field, given)
    if (value === undefined) {
      const instead = given === undefined ? "nothing" : `"${given}"`
      return wrong(`${name} needs a number in ${rangeOf(flag.field)}; ${instead} given`)
    }
    pose[flag.key] = value
  }
  if (files.length === 0) return wrong("no scene file is given")
  return { kind: "report", request: { files, json, pose } }
}

const wrong = (reason: string): Asked => ({ kind: "wrong", reason })

/** Decimal notation only: an empty word or a hexadecimal number is more likely a slip than a slope. */
const DECIMAL = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i

function numberIn(field: NumberField, text: string | undefined): number | undefined {
  if (text === undefined || !DECIMAL.test(text)) return undefined
  const value = Number(text)
  return value >= field.min && value <= field.max ? value : undefined
}

function rangeOf(field: NumberField): string {
  return rangeText(field.min, field.max, field.quantity)
}
