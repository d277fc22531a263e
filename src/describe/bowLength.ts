import { bowLength } from "../words/bowLength"
import { fixed, said, type UnitChoice } from "./format"

/** A bow is called this much longer than its string (AMO standards, 1987), as strings are made and sold. */
const AMO_BOW_OVER_STRING_MM = 3 * 25.4

/** AMO bow length, mm, of a bow whose string is so long, m. */
export const amoBowMm = (stringLength: number): number => stringLength * 1e3 + AMO_BOW_OVER_STRING_MM

/** "1650.6 mm, a 68.0-inch bow": bows are called by their inches whatever else is measured in. */
export const stringLengthText = (stringLength: number, units: UnitChoice): string =>
  bowLength.string(said(stringLength * 1e3, "length", units), fixed(amoBowMm(stringLength) / 25.4, 1))
