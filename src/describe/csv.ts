/** One column of a table: its heading with the unit, and its values from top to bottom; null where there is none. */
export interface CsvColumn {
  readonly heading: string
  readonly values: ArrayLike<number | string | null>
}

/**
 * Columns as comma-separated text after RFC 4180: lines end in CR LF, the first holds the headings. Numbers are
 * unrounded with a decimal point whatever the units on the page; what is not finite is left empty. Words that a spreadsheet would take for a formula get an apostrophe in front.
 */
export function csvText(columns: readonly CsvColumn[]): string {
  const count = columns.reduce((longest, { values }) => Math.max(longest, values.length), 0)
  const lines = [columns.map(({ heading }) => quoted(heading)).join(",")]
  for (let row = 0; row < count; row++) lines.push(columns.map(({ values }) => cell(values[row])).join(","))
  return lines.map((line) => `${line}\r\n`).join("")
}

function cell(value: number | string | null | undefined): string {
  if (typeof value === "string") return quoted(harmless(value))
  return value === null || value === undefined || !Number.isFinite(value) ? "" : String(value)
}

/** A formula in a spreadsheet starts with one of these (OWASP, CSV injection), whatever blanks stand before it. */
const harmless = (text: string): string => (/^\s*[=+\-@]|^[\t\r]/.test(text) ? `'${text}` : text)

const quoted = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
