import type { SwingRest, SwingWeight } from "../../core/swing"
import type { Side } from "../../core/rig"
import type { Solid, Vec3 } from "../../core/solids"
import type { PathStep } from "../errors"

export type PartKind =
  | "riser"
  | "limbs"
  | "string"
  | "arrow"
  | "accessory"
  | "extender"
  | "rod"
  | "damper"
  | "weights"
  | "vbar"
  | "swing"

/** Where a V-bar's arm begins and where it points, bow axes, m. */
export interface ArmLine {
  readonly start: Vec3
  readonly direction: Vec3
}

/** A coaxial piece of a chain, bow axes, m. */
export interface Axis {
  readonly start: Vec3
  /** Unit vector outward along the chain. */
  readonly direction: Vec3
  readonly length: number
  readonly outerRadius: number
  readonly innerRadius: number
}

/** A swing weight where it rests. */
export interface HungSwing {
  readonly weight: SwingWeight
  readonly hinge: Vec3
  readonly rest: SwingRest
}

/** One named thing with mass: what the parts table lists, the picture draws and the engine sums. */
export interface Part {
  /** The report's name for it, `front/vbar/left/rod#2`. Unique in a scene. */
  readonly path: string
  readonly kind: PartKind
  /** Where it stands in the scene document. */
  readonly address: readonly PathStep[]
  /** Bow axes, SI. Empty only for a stack of no discs. */
  readonly solids: readonly Solid[]
  /** Chain pieces only. */
  readonly axis?: Axis
  readonly arms?: Partial<Record<Side, ArmLine>>
  readonly hung?: HungSwing
}

export const MM = 1e-3
export const GRAM = 1e-3

export const metres = (mm: readonly [number, number, number]): Vec3 => [mm[0] * MM, mm[1] * MM, mm[2] * MM]

/** Gives the second and later parts of one name `#2`, `#3`, …, within whatever scope one counter is kept for. */
export function nameCounter(): (name: string) => string {
  const seen = new Map<string, number>()
  return (name) => {
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return count === 1 ? name : `${name}#${count}`
  }
}
