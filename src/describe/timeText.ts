import { locale } from "../words/language"

/** "25 Nov 2026, 14:05" as the reader's region writes it; `at` in milliseconds since 1970. */
export const timeText = (at: number): string =>
  new Date(at).toLocaleString(locale, { dateStyle: "medium", timeStyle: "short" })
