import type { FindQuestion, FindTarget, ScoreName } from "../../scene/find"
import type { NumberField } from "../../scene/fields"
import { targetFields } from "../../scene/fields"
import { questionFields } from "../../scene/kit/fields"
import { mountNames } from "../../scene/mountNames"
import { rangeText } from "../../scene/units"
import { decimal, givenText, readWords } from "../words"

export const usage = `Usage: npm run -s find -- SCENE KIT [options] [--json]

Finds the setups of a kit (.json, or a table as .csv) that bring the scene's bow into its target, and proves the list.
  --score NAME            nearest (to the middle of the targets; default), lightest, steadiest, steady-for-mass
  --count N               how many are listed                    (${rangeOf(questionFields.count)}; default 20)
  --variety each|pieces   each setup (default), or of the same pieces only the one with the best angles
  --hold brace|drawn      where balance and turn resistance are judged (default brace)
  --mounts NAME,...       mounts built anew; the others stay (default: those that carry something, and the V-bar's)
  --vbar-mount NAME|none  the mount that may carry a V-bar
  --arms alike|free       both arms the same (default), or each for itself
  --front-rod always|optional  --vbar always|optional   whether one has to be there (default: as on the scene's rig)
  --most-discs N          discs on one stack at most             (${rangeOf(questionFields.mostDiscs)}; default 8)
  --workers N             how many work at once                  (1 … 16; default: as many as there are processors, up to 4)
Limits; those of the scene's target unless given here, "none" to drop one:
  --forward MIN,MAX  --up MIN,MAX  --side MIN,MAX   balance point, mm
  --net-lift MIN,MAX                                at full draw, N·m
  --mass-max G  --reach-forward MM  --reach-side MM
  --pitch-least X  --yaw-least X  --roll-least X    turn resistance about the grip, kg·m²
  --json             print one object
Exit status: 0, whether or not a setup was found, or 2 when anything is wrong, with the reason on standard error and
nothing else printed.
`

export interface FindRequest {
  readonly scene: string
  readonly kit: string
  readonly json: boolean
  readonly workers: number | null
  /** What replaces the question the scene suggests. */
  readonly question: Partial<Omit<FindQuestion, "target" | "always">>
  readonly always: Partial<FindQuestion["always"]>
  /** What replaces the scene's target; undefined for a limit that is dropped. */
  readonly target: Partial<FindTarget>
}

export type Asked =
  | { readonly kind: "find"; readonly request: FindRequest }
  | { readonly kind: "help" }
  | { readonly kind: "wrong"; readonly reason: string }

const scores: Readonly<Record<string, ScoreName>> = {
  nearest: "nearest",
  lightest: "lightest",
  steadiest: "steadiest",
  "steady-for-mass": "steadyForMass",
}

type Value = { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly needed: string }
interface Flag {
  readonly key: string
  readonly into: "question" | "target" | "always" | "workers"
  read(text: string): Value
}

const flags: Readonly<Record<string, Flag>> = {
  "--score": { key: "score", into: "question", read: (text) => choice(scores, text) },
  "--count": { key: "count", into: "question", read: (text) => number(questionFields.count, text) },
  "--variety": { key: "variety", into: "question", read: (text) => choice({ each: "each", pieces: "pieces" }, text) },
  "--hold": { key: "hold", into: "question", read: (text) => choice({ brace: "brace", drawn: "drawn" }, text) },
  "--arms": { key: "arms", into: "question", read: (text) => choice({ alike: "alike", free: "free" }, text) },
  "--most-discs": { key: "mostDiscs", into: "question", read: (text) => number(questionFields.mostDiscs, text) },
  "--mounts": { key: "mounts", into: "question", read: mounts },
  "--vbar-mount": { key: "vbarMount", into: "question", read: (text) => choice({ ...named, none: null }, text) },
  "--front-rod": { key: "frontRod", into: "always", read: presence },
  "--vbar": { key: "vbar", into: "always", read: presence },
  "--workers": { key: "workers", into: "workers", read: workers },
  "--forward": { key: "forwardMm", into: "target", read: (text) => band(targetFields.forwardMm, text) },
  "--up": { key: "upMm", into: "target", read: (text) => band(targetFields.upMm, text) },
  "--side": { key: "sideMm", into: "target", read: (text) => band(targetFields.sideMm, text) },
  "--net-lift": { key: "netLiftNm", into: "target", read: (text) => band(targetFields.netLiftNm, text) },
  "--mass-max": { key: "massMaxG", into: "target", read: (text) => limit(targetFields.massMaxG, text) },
  ...Object.fromEntries(
    (["reachForwardMm", "reachSideMm", "pitchLeast", "yawLeast", "rollLeast"] as const).map((key): [string, Flag] => [
      `--${key.replace("Mm", "").replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
      { key, into: "target", read: (text) => limit(questionFields[key], text) },
    ]),
  ),
}

/** Reads the words after `find`: two files and flags; see `readWords`. */
export function readFindArguments(words: readonly string[]): Asked {
  const taken: Record<Flag["into"], Record<string, unknown>> = { question: {}, target: {}, always: {}, workers: {} }
  const read = readWords(words, (name) => {
    const flag = Object.hasOwn(flags, name) ? flags[name] : undefined
    if (flag === undefined) return undefined
    return (given) => {
      const value = flag.read(given ?? "")
      if (!value.ok) return `${name} needs ${value.needed}; ${givenText(given)} given`
      taken[flag.into][flag.key] = value.value
      return null
    }
  })
  if (read.kind !== "read") return read
  const [scene, kit, ...more] = read.files
  if (scene === undefined || kit === undefined) return wrong("a scene file and a kit file are needed")
  if (more.length > 0) return wrong(`one scene and one kit are taken; "${more[0]}" is one too many`)
  const { question, target, always } = taken
  const workers = (taken.workers.workers as number | undefined) ?? null
  return { kind: "find", request: { scene, kit, json: read.json, workers, question, target, always } }
}

const wrong = (reason: string): Asked => ({ kind: "wrong", reason })

const named = Object.fromEntries(mountNames.map((mount) => [mount, mount]))

function choice<T>(choices: Readonly<Record<string, T>>, text: string): Value {
  if (Object.hasOwn(choices, text)) return { ok: true, value: choices[text] }
  return { ok: false, needed: `one of ${Object.keys(choices).join(", ")}` }
}

function mounts(text: string): Value {
  const names = text.split(",")
  if (names.every((name) => Object.hasOwn(named, name))) return { ok: true, value: names }
  return { ok: false, needed: `names out of ${mountNames.join(", ")}, with commas between` }
}

function presence(text: string): Value {
  return choice({ always: true, optional: false }, text)
}

function inField(field: NumberField, text: string): number | null {
  const value = decimal(text)
  return value >= field.min && value <= field.max && (!field.whole || Number.isInteger(value)) ? value : null
}

function number(field: NumberField, text: string): Value {
  const value = inField(field, text)
  return value === null ? { ok: false, needed: `a number in ${rangeOf(field)}` } : { ok: true, value }
}

const limit = (field: NumberField, text: string): Value =>
  text === "none" ? { ok: true, value: undefined } : number(field, text)

function band(field: NumberField, text: string): Value {
  if (text === "none") return { ok: true, value: undefined }
  const values = text.split(",").map((part) => inField(field, part))
  const [min, max] = values
  if (values.length === 2 && min != null && max != null) return { ok: true, value: [min, max] }
  return { ok: false, needed: `two numbers in ${rangeOf(field)} with a comma between` }
}

const MOST_WORKERS = 16

function workers(text: string): Value {
  const value = decimal(text)
  if (Number.isInteger(value) && value >= 1 && value <= MOST_WORKERS) return { ok: true, value }
  return { ok: false, needed: `a whole number in 1 … ${MOST_WORKERS}` }
}

function rangeOf(field: NumberField): string {
  return rangeText(field.min, field.max, field.quantity)
}
