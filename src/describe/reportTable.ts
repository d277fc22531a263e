/**
 * Decimals of each quantity as printed: a tenth of a gram, of a millimetre and of a newton, a thousandth of a N·m and
 * a ten-thousandth of a kg·m², each finer than a coach can measure it.
 */
export const DECIMALS = { gram: 1, mm: 1, newton: 1, newtonMetre: 3, inertia: 4 } as const

/** A number with a fixed count of decimals, and never a negative zero. */
export function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals)
  return Number(text) === 0 ? text.replace("-", "") : text
}

/** The same with its sign always said. */
export const signed = (value: number, decimals: number): string => {
  const text = fixed(value, decimals)
  return text.startsWith("-") || Number(text) === 0 ? text : `+${text}`
}

/**
 * Rounds values so that, as shown, they add up to their rounded total (largest remainders). Each stays within one
 * unit of the last place of its own value, and what needs no rounding is not changed.
 */
export function roundToSum(values: readonly number[], decimals: number): number[] {
  const unit = 10 ** decimals
  const scaled = values.map((value) => nearWhole(value * unit))
  const whole = scaled.map(Math.floor)
  const rest = scaled.map((value, index) => value - whole[index]!)
  let missing = Math.round(scaled.reduce((sum, value) => sum + value, 0)) - whole.reduce((sum, value) => sum + value, 0)
  for (const index of rest.map((_, place) => place).sort((a, b) => rest[b]! - rest[a]!)) {
    if (missing-- > 0) whole[index]!++
  }
  return whole.map((value) => value / unit)
}

/** 59.99999999999 g is 60 g: float64 noise of the unit conversions, not something to round away from a part. */
const NOISE = 1e-7
const nearWhole = (value: number): number => (Math.abs(value - Math.round(value)) < NOISE ? Math.round(value) : value)

/** Rows under their headings: the first column to the left, numbers to the right, indented by two. */
export function table(headings: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const widths = headings.map((heading, column) =>
    Math.max(...[heading, ...rows.map((row) => row[column] ?? "")].map(width)),
  )
  return [headings, ...rows].map((row) =>
    `  ${row
      .map((cell, column) => {
        const gap = " ".repeat(widths[column]! - width(cell))
        return column === 0 ? cell + gap : gap + cell
      })
      .join("  ")}`.trimEnd(),
  )
}

/** Labels and what they are, the latter in one column. */
export function pairs(rows: readonly (readonly [string, string])[]): string[] {
  const widest = Math.max(...rows.map(([label]) => label.length))
  return rows.map(([label, value]) => `  ${label.padEnd(widest)}  ${value}`)
}

/** Characters as a person counts them, not UTF-16 units. */
const width = (text: string): number => [...text].length

const LONGEST = 44

/** A name short enough for a column: the middle of a longer one gives way. */
export function shortened(text: string): string {
  const letters = [...text]
  if (letters.length <= LONGEST) return text
  const half = (LONGEST - 1) / 2
  return `${letters.slice(0, Math.ceil(half)).join("")}…${letters.slice(-Math.floor(half)).join("")}`
}
