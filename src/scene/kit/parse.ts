import { fileFaults } from "../../words/fileFaults"
import { kitFaults as faults } from "../../words/kitFaults"
import { sceneFaults } from "../../words/sceneFaults"
import { failure, pathText, quoted, type Result, type SceneError, success } from "../errors"
import { issueErrors, parseJson } from "../parse"
import { KIT_FORMAT, KIT_VERSION, type Kit, kitSchema, kitSections } from "./schema"

/** A kit from the text of a file. Every error names its place; nothing is repaired by guessing. */
export function parseKit(text: string): Result<Kit> {
  const document = parseJson(text)
  return document.ok ? readKit(document.value) : document
}

/** A kit from an already parsed document. */
export function readKit(input: unknown): Result<Kit> {
  const wrong = envelopeError(input)
  if (wrong !== null) return failure(wrong)
  const parsed = kitSchema.safeParse(input, { reportInput: true })
  if (!parsed.success) return { ok: false, errors: parsed.error.issues.flatMap(issueErrors) }
  const broken = kitErrors(parsed.data)
  return broken.length > 0 ? { ok: false, errors: broken } : success(parsed.data)
}

function envelopeError(input: unknown): SceneError | null {
  if (input === null || typeof input !== "object" || Array.isArray(input)) {
    return { code: "not-a-scene", path: "", message: faults.notAKit(quoted(input)) }
  }
  const { format, version } = input as { format?: unknown; version?: unknown }
  if (format !== KIT_FORMAT) {
    return { code: "not-a-scene", path: "format", message: faults.format(quoted(format), KIT_FORMAT) }
  }
  if (typeof version === "number" && version > KIT_VERSION) {
    return { code: "newer-version", path: "version", message: fileFaults.newer(String(version), KIT_VERSION) }
  }
  return null
}

/** The rules between the fields of a kit, once each is in its own range. */
export function kitErrors(kit: Kit): SceneError[] {
  const errors: SceneError[] = []
  const contradiction = (path: (string | number)[], message: string) =>
    errors.push({ code: "contradiction", path: pathText(path), message })
  for (const section of ["rods", "extenders", "dampers"] as const) {
    kit[section].forEach(({ innerMm, outerMm }, index) => {
      if (innerMm < outerMm) return
      contradiction([section, index, "innerMm"], sceneFaults.boreTooWide(String(innerMm), `${outerMm} mm`).join(""))
    })
  }
  kit.vbars.forEach((vbar, index) => {
    for (const key of ["splayDeg", "droopDeg"] as const) {
      const { from, to } = vbar[key]
      if (to < from) contradiction(["vbars", index, key, "to"], faults.noLess(String(to), `${from}°`))
    }
  })
  return errors
}

/** The text of a kit file: every key, in the format's order. */
export const serializeKit = (kit: Kit): string => `${JSON.stringify(kitSchema.parse(kit), null, 2)}\n`

/** How many pieces a kit has, of all kinds. */
export const piecesIn = (kit: Kit): number =>
  kitSections.reduce((sum, section) => sum + kit[section].reduce((many, { count }) => many + count, 0), 0)

/** A kit with nothing in it. */
export const emptyKit = (name: string): Kit => ({
  format: KIT_FORMAT,
  version: KIT_VERSION,
  name,
  notes: "",
  rods: [],
  extenders: [],
  vbars: [],
  dampers: [],
  discs: [],
})
