import type { UnitChoice } from "../describe/format"
import { short } from "../describe/placeWords"

export interface Tick {
  /** m from the grip, positive to the target. */
  readonly at: number
  /** With the unit on the one furthest forward. */
  readonly text: string
}

/** Distances between ticks, in the shown unit. */
const STEPS = { mm: [50, 100, 200, 500, 1000], in: [2, 4, 8, 20, 40] }
const METRE = { mm: 1000, in: 1000 / 25.4 }

/** Round distances from the grip between two places (m), at least `least` px apart at `scale` px/m. */
export function ticks(from: number, to: number, scale: number, least: number, units: UnitChoice): Tick[] {
  const perMetre = METRE[units.lengthUnit]
  const steps = STEPS[units.lengthUnit]
  const step = (steps.find((candidate) => (candidate / perMetre) * scale >= least) ?? steps.at(-1)!) / perMetre
  const first = Math.ceil(from / step - 1e-9)
  const last = Math.floor(to / step + 1e-9)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => {
    const at = (first + index) * step
    const text = short(at * 1e3, "length", units)
    return { at, text: first + index === last ? text : text.replace(/\u00a0\D+$/, "") }
  })
}
