import type { Scene } from "../schema"
import { type ChainEdit, type SlotChange, withEdits, withValues } from "./change"
import type { KnobKind } from "./knobs"
import type { StructureKind } from "./structures"
import type { TargetKey } from "./targets"

/** Numbers set anew. */
export interface NumberChange {
  readonly kind: KnobKind
  /** What to set, all together, in the file's units. Of a pair the left arm's comes first. */
  readonly changes: readonly SlotChange[]
  /** The present values, in the order of `changes`. */
  readonly from: readonly number[]
}

/** Parts put in or taken out. */
export interface PartChange {
  readonly kind: StructureKind
  /** Of a pair the left arm's comes first. */
  readonly edits: readonly ChainEdit[]
}

export type RigChange = NumberChange | PartChange

/** The scene with a change made. */
export const changedBy = (scene: Scene, change: RigChange): Scene =>
  "edits" in change ? withEdits(scene, change.edits) : withValues(scene, change.changes)

/** One change at the bench that brings a missed target inside. */
export type Suggestion = RigChange & {
  /** Unique among one scene's suggestions. */
  readonly id: string
  readonly target: TargetKey
  /** The target's figure in the file's unit, as it is and with the change really made. */
  readonly predicted: { readonly before: number; readonly after: number }
  /** Targets that are met now and would no longer be. */
  readonly breaks: readonly TargetKey[]
  /** In discs; see `costs`. */
  readonly cost: number
}

/** Order of worth: what keeps every met target first, then the cheapest. */
export const byWorth = (a: Suggestion, b: Suggestion): number => a.breaks.length - b.breaks.length || a.cost - b.cost
