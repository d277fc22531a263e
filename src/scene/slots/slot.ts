import type { PathStep } from "../errors"
import type { NumberField } from "../fields"

/**
 * One editable number of a scene: where it stands in the document, what it is called everywhere else, and its
 * limits. Fields, sliders, handles and sensitivities all go through slots, so they agree on names and ranges.
 */
export interface Slot {
  /** `<part path>:<field>`, for example `front/vbar/left:droopDeg` or `bow/riser:centreMm.forward`. Unique. */
  readonly key: string
  /** The part path in front of the colon. */
  readonly owner: string
  /** Place in the scene document. */
  readonly address: readonly PathStep[]
  readonly field: NumberField
  /** The field's label, with the axis where there are several: "place, forward". */
  readonly label: string
  readonly value: number
  /** Fields that only some rods have: no number stands there yet. */
  readonly absent: boolean
}

export const AXES = ["forward", "up", "side"] as const
export const GYRATION_AXES = ["roll", "yaw", "pitch"] as const
