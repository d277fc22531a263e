import type { Vec3 } from "../core/solids"
import { stepped } from "../describe/fieldText"
import type { UnitChoice } from "../describe/format"
import type { NumberField } from "../scene/fields"

/** How a handle moves and so what its knob looks like: out and in, round, one disc at a time, with its mount, or the nock. */
export type HandleKind = "length" | "angle" | "count" | "place" | "draw"

/** The drawing in which a handle's movement is seen best where there are several. */
export type Pane = "side" | "top"

/** One number of the scene that can be taken hold of in the picture. Knows nothing of pixels. */
export interface Handle {
  /** The slot's key, `front/rod:lengthMm`. */
  readonly key: string
  readonly kind: HandleKind
  /** For people: "Front rod length". No two handles of a scene have the same. */
  readonly label: string
  /** Range, steps and quantity of the number. */
  readonly field: NumberField
  /** In the file's unit. */
  readonly value: number
  /** Where the handle is for that value, bow axes, m. Continuous in the value, also between whole counts. */
  readonly place: (value: number) => Vec3
  /** The point it turns about, where nothing else in the picture leads from there to the handle. Bow axes, m. */
  readonly hub: Vec3 | null
  /** Path of the part or mount it belongs to. */
  readonly owner: string
  readonly seen: Pane
  /** Tells on the lift of the line of pull, not on the balance point; it lies in the plane seen from the side. */
  readonly lifts: boolean
  /** Key of the same number on the V-bar's other arm, where there is one. */
  readonly twin: string | null
}

/**
 * The value a pointer leaves a handle at: inside its range, on the nearest step that is round in the shown unit.
 * In the file's unit.
 */
export function snap({ field }: Pick<Handle, "field">, value: number, units: UnitChoice): number {
  const step = stepped(field.min, field, units, 1, false) - field.min
  // Twelve digits: all that is meant, without what binary arithmetic leaves behind them.
  const even = Number((Math.round(value / step) * step).toPrecision(12)) + 0
  return Math.min(field.max, Math.max(field.min, even))
}
