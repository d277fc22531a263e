import { spoken } from "./language"

/** In the picture, on a hillside and beside weights in motion. `angle` is "12.5°". */
export const hill = spoken("hill", {
  /** Beside the target. */
  targetUp: (angle: string) => `target up the hill, ${angle}`,
  targetDown: (angle: string) => `target down the hill, ${angle}`,
  /** Beside the dashed outline of a swing weight that does not swing. */
  locked: "locked",
  /** Beside a bow that plays a motion: where its front points. */
  movingUp: (angle: string) => `in motion, bow ${angle} up`,
  movingDown: (angle: string) => `in motion, bow ${angle} down`,
})
