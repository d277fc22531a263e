import { hill } from "../words/hill"
import { localNumber } from "../words/numbers"
import { fixed } from "./format"

/** "12.5°": the size of an angle to a tenth, without needless zeros. */
export const angleSize = (degrees: number): string => `${localNumber(String(Number(Math.abs(degrees).toFixed(1))))}°`

/** "target up the hill, 20°", "target down the hill, 12.5°": beside the target that stands on a drawn hillside. */
export const hillTargetLabel = (slopeDeg: number): string =>
  (slopeDeg > 0 ? hill.targetUp : hill.targetDown)(angleSize(slopeDeg))

/** Beside the dashed outline of a swing weight in the picture. */
export const LOCKED = hill.locked

/** "in motion, bow 12.3° up": beside a bow that plays a motion; one decimal, so that the words keep their width. */
export const motionLabel = (slopeDeg: number): string =>
  (slopeDeg < 0 ? hill.movingDown : hill.movingUp)(`${fixed(Math.abs(slopeDeg), 1)}°`)
