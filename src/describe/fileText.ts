import { type Language, language } from "../words/language"

/** A text of a file that people write for others: one for every reader, or one for each language the page speaks. */
export type FileText = string | Readonly<Record<Language, string>>

/** The text for a reader of this language, the page's unless another is named. */
export const fileText = (text: FileText, reading: Language = language): string =>
  typeof text === "string" ? text : text[reading]
