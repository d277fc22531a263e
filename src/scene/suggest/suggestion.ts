import type { SlotChange } from "./change"
import type { KnobKind } from "./knobs"
import type { TargetKey } from "./targets"

/** One change at the bench that brings a missed target inside. */
export interface Suggestion {
  /** Unique among one scene's suggestions. */
  readonly id: string
  readonly target: TargetKey
  readonly kind: KnobKind
  /** What to set, all together, in the file's units. Of a pair the left arm's comes first. */
  readonly changes: readonly SlotChange[]
  /** The present values, in the order of `changes`. */
  readonly from: readonly number[]
  /** The target's figure in the file's unit, as it is and with the change really made. */
  readonly predicted: { readonly before: number; readonly after: number }
  /** Targets that are met now and would no longer be. */
  readonly breaks: readonly TargetKey[]
  /** In discs; see `costOf`. */
  readonly cost: number
}

/** Order of worth: what keeps every met target first, then the cheapest. */
export const byWorth = (a: Suggestion, b: Suggestion): number => a.breaks.length - b.breaks.length || a.cost - b.cost
