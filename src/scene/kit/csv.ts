import { kitFaults as faults } from "../../words/kitFaults"
import { fileFaults } from "../../words/fileFaults"
import { failure, quoted, type Result, type SceneError } from "../errors"
import { kitFields } from "./fields"
import { emptyKit, readKit } from "./parse"
import type { Kit, KitSection } from "./schema"

/** What the column `piece` says, and the list of the kit it stands for. */
const sectionOf: Readonly<Record<string, KitSection>> = {
  rod: "rods",
  extender: "extenders",
  vbar: "vbars",
  damper: "dampers",
  discs: "discs",
}
const pieceOf = Object.fromEntries(Object.entries(sectionOf).map(([piece, section]) => [section, piece]))

/** The columns of a kit as a table, in the order they are written; each is a key of the file, angles taken apart. */
const columns = [
  ...["piece", "name", "count", "use", "massG", "lengthMm", "outerMm", "innerMm", "modulusGPa", "maxEndWeightG"],
  ...["stiffnessNmPerRad", "eachG", "thicknessMm", "armOffsetMm"],
  ...["splayDeg.from", "splayDeg.to", "splayDeg.step", "droopDeg.from", "droopDeg.to", "droopDeg.step"],
]
const words = new Set(["piece", "name", "use"])

/**
 * A kit from a table: comma-, semicolon- or tab-separated, first line the names of the columns in any order, one line
 * a kind of piece. An empty cell is a key left out; an angle's `to` left out is its `from`. With semicolons or tabs a
 * decimal comma is understood. Errors name line and column.
 */
export function kitFromTable(text: string, name: string): Result<Kit> {
  const { rows, separator } = cells(text.replace(/^\uFEFF/, ""))
  const [heading, ...lines] = rows
  if (heading === undefined) return failure({ code: "syntax", path: "", message: fileFaults.empty })
  const named = heading.cells.map((cell) => columns.find((each) => each.toLowerCase() === cell.trim().toLowerCase()))
  const unknown = named.flatMap((column, index): SceneError[] =>
    column !== undefined || heading.cells[index]!.trim() === ""
      ? []
      : [{ code: "unknown-key", path: faults.column(1, index + 1), message: unknownColumn(heading.cells[index]!) }],
  )
  if (unknown.length > 0) return { ok: false, errors: unknown }
  if (!named.includes("piece")) {
    return failure({ code: "missing", path: faults.line(1), message: faults.noPieceColumn })
  }
  const document: Record<string, unknown> = { ...emptyKit(name) }
  const places = new Map<string, { line: number; piece: string }>()
  const strange: PlacedError[] = []
  for (const { cells: row, line } of lines) {
    const entry: Record<string, unknown> = {}
    row.forEach((cell, index) => {
      const column = named[index]
      if (column !== undefined && cell.trim() !== "") put(entry, column, cell.trim(), separator)
    })
    const { piece, ...rest } = entry
    const section = Object.hasOwn(sectionOf, String(piece)) ? sectionOf[String(piece)] : undefined
    if (section === undefined) {
      const message = fileFaults.oneOf(quoted(piece), Object.keys(sectionOf).join(", "))
      strange.push({ line, error: { code: "not-allowed", path: faults.inLine(line, "piece"), message } })
      continue
    }
    const entries = document[section] as unknown[]
    places.set(`${section}[${entries.length}]`, { line, piece: String(piece) })
    document[section] = [...entries, rest]
  }
  const kit = readKit(document)
  if (kit.ok && strange.length === 0) return kit
  const read = kit.ok ? [] : kit.errors.map((error) => placed(error, places))
  const inOrder = [...strange, ...read].sort((a, b) => a.line - b.line)
  return { ok: false, errors: inOrder.map(({ error }) => error) }
}

/** An error by its line; 0 for one of the whole table. */
interface PlacedError {
  readonly line: number
  readonly error: SceneError
}

const unknownColumn = (cell: string) => faults.unknownColumn(quoted(cell), columns.join(", "))

/** An error at `rods[2].massG` as one at `line 4, massG`; a key of other pieces is told to be theirs. */
function placed(error: SceneError, places: ReadonlyMap<string, { line: number; piece: string }>): PlacedError {
  const [, entry = "", key = ""] = /^(\w+\[\d+\])\.?(.*)$/.exec(error.path) ?? []
  const place = places.get(entry)
  if (place === undefined) return { line: 0, error }
  const { line, piece: here } = place
  const path = key === "" ? faults.line(line) : faults.inLine(line, key)
  if (error.code !== "unknown-key") return { line, error: { ...error, path } }
  const owners = Object.keys(sectionOf).filter((piece) =>
    key === "use" ? piece === "rod" : key in kitFields[piece as keyof typeof kitFields],
  )
  const theirs = owners.length < 2 ? owners.join() : faults.and(owners.slice(0, -1).join(", "), owners.at(-1)!)
  return { line, error: { ...error, path, message: faults.strayColumn(theirs, here) } }
}

function put(entry: Record<string, unknown>, column: string, cell: string, separator: string): void {
  const [key = "", part] = column.split(".")
  const value = words.has(column) ? cell : numberFrom(cell, separator)
  if (part === undefined) {
    entry[key] = column === "piece" ? cell.toLowerCase() : value
    return
  }
  const angles = (entry[key] ?? {}) as Record<string, unknown>
  // A fixed angle is written once.
  if (part === "from") angles.to ??= value
  angles[part] = value
  entry[key] = angles
}

/** The number a cell holds, or the cell itself, which the kit's own check then refuses by name. */
function numberFrom(cell: string, separator: string): unknown {
  const plain = separator === "," ? cell : cell.replace(",", ".")
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(plain) ? Number(plain) : cell
}

interface Row {
  readonly line: number
  readonly cells: readonly string[]
}

/** Rows of a separated-values text after RFC 4180; lines with nothing on them are left out. */
function cells(text: string): { rows: Row[]; separator: string } {
  const first = /^[^\r\n]*/.exec(text)?.[0] ?? ""
  const separator = [";", "\t"].find((each) => first.includes(each)) ?? ","
  const rows: Row[] = []
  let row: string[] = []
  let cell = ""
  let quotes = false
  let line = 1
  let begun = 1
  const endCell = () => {
    row.push(cell)
    cell = ""
  }
  const endRow = () => {
    endCell()
    if (row.some((each) => each.trim() !== "")) rows.push({ line: begun, cells: row })
    row = []
  }
  for (let at = 0; at < text.length; at++) {
    const letter = text[at]!
    if (letter === "\n") line++
    if (quotes) {
      if (letter !== '"') cell += letter
      else if (text[at + 1] === '"') {
        cell += '"'
        at++
      } else quotes = false
    } else if (letter === '"' && cell === "") quotes = true
    else if (letter === separator) endCell()
    else if (letter === "\n") {
      endRow()
      begun = line
    } else if (letter !== "\r") cell += letter
  }
  endRow()
  return { rows, separator }
}

/** A kit as a table that `kitFromTable` reads back, but for the kit's own name and notes. */
export function kitTable(kit: Kit): string {
  const lines = Object.entries(pieceOf).flatMap(([section, piece]) =>
    kit[section as KitSection].map((entry) =>
      columns.map((column) => {
        if (column === "piece") return piece
        const value = column.split(".").reduce<unknown>((here, key) => (here as Record<string, unknown>)?.[key], entry)
        return value === undefined ? "" : String(value)
      }),
    ),
  )
  const quote = (cell: string) => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)
  return [columns, ...lines].map((line) => `${line.map(quote).join(",")}\r\n`).join("")
}
