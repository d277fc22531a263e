import { nudgeNames as names } from "../../words/nudgeNames"
import { field } from "../fields"

/**
 * The numbers of a nudge. Usual sizes are assumed: what a bad release gives is felt, not measured. An
 * arrow is on the string for 15 to 20 ms after it is let go (common practice, no source).
 */
export const nudgeFields = {
  impulse: field(names.impulse, "impulse", -0.3, 0.3, { step: 0.001, coarse: 0.01, fallback: 0.01 }),
  push: field(names.push, "moment", -3, 3, { step: 0.05, coarse: 0.5, fallback: 0.2 }),
  lastingS: field(names.lasting, "duration", 0.01, 1, { step: 0.01, coarse: 0.1, fallback: 0.2 }),
  leavesS: field(names.leaves, "duration", 0, 0.5, { step: 0.001, coarse: 0.01, fallback: 0.016 }),
  pitch: field(names.pitch, "stiffness", 0, 400, { step: 1, coarse: 10 }),
  yaw: field(names.yaw, "stiffness", 0, 400, { step: 1, coarse: 10 }),
  roll: field(names.roll, "stiffness", 0, 400, { step: 1, coarse: 10 }),
  damping: field(names.damping, "damping", 0, 10, { step: 0.05, coarse: 0.5 }),
} as const
