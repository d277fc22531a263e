import { locale } from "./language"

/** What stands between the whole of a number and its fraction in the locale of the page. */
export const decimalMark = new Intl.NumberFormat(locale)
  .formatToParts(1.5)
  .find(({ type }) => type === "decimal")!.value

/** A number as JavaScript writes it, "-0.5", as the reader does: "−0.5", "−0,5". */
export const localNumber = (digits: string): string => typedNumber(digits).replace("-", "\u2212")

/** The same as a keyboard has it, for text that may be typed on: a hyphen stays. */
export const typedNumber = (digits: string): string => digits.replace(".", decimalMark)

/** "1,250" or "12,500.5" where a point is the decimal mark; "1.250,5" wherever it is written. */
const GROUPED_BY_COMMA = /^[+-]?[1-9]\d{0,2}(,\d{3})+(\.\d*)?$/
const GROUPED_BY_POINT = /^[+-]?[1-9]\d{0,2}(\.\d{3})+,\d*$/

/**
 * A number as somebody typed it, in the digits that JavaScript reads. Point and comma both stand for the decimal mark,
 * save that a comma before every three digits groups thousands where the page's own mark is a point; spaces group
 * anywhere. What is no number comes back as no number.
 *
 * @param mark the decimal mark of whoever types
 */
export function plainDigits(text: string, mark = decimalMark): string {
  const plain = text
    .trim()
    .replace("\u2212", "-")
    .replace(/(?<=\d)[ \u00a0\u202f'](?=\d{3}(?!\d))/g, "")
  if (mark === "." && GROUPED_BY_COMMA.test(plain)) return plain.replaceAll(",", "")
  if (GROUPED_BY_POINT.test(plain)) return plain.replaceAll(".", "").replace(",", ".")
  return plain.replace(",", ".")
}
