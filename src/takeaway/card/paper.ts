export type Paper = "A4" | "letter"

/** Sheets, mm (ISO 216; ANSI/ASME Y14.1). */
export const sizeMm: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  A4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
}

/** Where people put Letter into their printers. */
const LETTER = /-(US|CA|MX|PH|CL|CO|VE)\b/i

export const usualPaper = (language: string): Paper => (LETTER.test(language) ? "letter" : "A4")

/** How much of a card is shown: from everything in comfortable type to as much as one page takes. */
export interface Fit {
  /** Size of the type, pt. */
  readonly type: number
  /** The least the drawing takes, mm. */
  readonly drawing: number
  /** Characters of the notes. */
  readonly notes: number
}

/** Tried in turn until everything is on the one page. */
export const fits: readonly Fit[] = [
  { type: 9, drawing: 105, notes: 1200 },
  { type: 8.5, drawing: 95, notes: 900 },
  { type: 8, drawing: 85, notes: 600 },
  { type: 7.5, drawing: 75, notes: 400 },
  { type: 7, drawing: 65, notes: 200 },
  { type: 6.5, drawing: 55, notes: 0 },
  { type: 6, drawing: 45, notes: 0 },
  { type: 5, drawing: 40, notes: 0 },
  { type: 4, drawing: 35, notes: 0 },
]

/** Notes cut at a word, and whether they were. */
export function cutNotes(notes: string, most: number): { readonly text: string; readonly cut: boolean } {
  if (notes.length <= most) return { text: notes, cut: false }
  const text = notes.slice(0, most).replace(/\s+\S*$/, "")
  return { text: text === "" ? "" : `${text} …`, cut: true }
}
