import { errorLine, type Result } from "../../scene/errors"
import { type Asked, type Outcome, questionFor, startFind } from "../../scene/find"
import type { Spawn } from "../../scene/find/pool/pool"
import { type Kit, kitFromTable, parseKit } from "../../scene/kit"
import { parseScene } from "../../scene/parse"
import type { FileText } from "../readText"
import { type Outcome as Streams, printable } from "../run"
import { readFindArguments, usage } from "./arguments"
import { findJson, findText } from "./text"

/** What the command needs of the machine it runs on. */
export interface Machine {
  readonly processors: number
  readonly spawn: Spawn
  read(file: string): FileText
}

/** More than these share out a search that is mostly over in a second to no one's gain. */
const MOST_BY_DEFAULT = 4

/** The find command without its process. All or nothing: any fault, and only the reasons are told. */
export async function runFind(words: readonly string[], machine: Machine): Promise<Streams> {
  const given = readFindArguments(words)
  if (given.kind === "help") return { output: usage, errors: "", status: 0 }
  if (given.kind === "wrong") return { output: "", errors: `${printable(given.reason)}\n\n${usage}`, status: 2 }
  const { request } = given
  const scene = parsed(request.scene, machine, parseScene)
  const kit = parsed(request.kit, machine, (text) =>
    /\.csv$/i.test(request.kit) ? kitFromTable(text, nameOf(request.kit)) : parseKit(text),
  )
  const reasons = [...("reasons" in scene ? scene.reasons : []), ...("reasons" in kit ? kit.reasons : [])]
  if ("reasons" in scene || "reasons" in kit) return refused(reasons)
  const suggested = questionFor(scene.value)
  const target = { ...suggested.target, ...request.target }
  const always = { ...suggested.always, ...request.always }
  const question = { ...suggested, ...request.question, target, always }
  const asked: Asked = { scene: scene.value, kit: kit.value, question }
  const workers = request.workers ?? Math.min(MOST_BY_DEFAULT, machine.processors)
  const outcome = await new Promise<Outcome>((resolve) => {
    startFind(asked, workers, machine.spawn, () => {}, resolve)
  })
  if (outcome.kind === "refused") return refused(outcome.errors.map(errorLine))
  const output = request.json ? findJson(asked, outcome) : findText(asked, outcome)
  return { output, errors: "", status: 0 }
}

const refused = (reasons: readonly string[]): Streams => ({
  output: "",
  errors: reasons.map((reason) => `${printable(reason)}\n`).join(""),
  status: 2,
})

function parsed<T extends Kit | Asked["scene"]>(
  file: string,
  { read }: Machine,
  parse: (text: string) => Result<T>,
): { value: T } | { reasons: string[] } {
  const found = read(file)
  if (!found.ok) return { reasons: [`${file}: ${found.reason}`] }
  const made = parse(found.text)
  return made.ok ? { value: made.value } : { reasons: made.errors.map((error) => `${file}: ${errorLine(error)}`) }
}

const nameOf = (file: string): string => file.replace(/^.*[\\/]/, "").replace(/\.csv$/i, "")
