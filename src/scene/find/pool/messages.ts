import type { Found } from "../../../core/find"
import type { Kit } from "../../kit/schema"
import type { Scene } from "../../schema"
import type { FoundSetup } from "../answers"
import type { Miss } from "../misses"
import type { FindQuestion } from "../question"
import type { SpaceFault } from "../space"

/** Everything a worker needs to know of a search; plain data, so that it can be posted. */
export interface Asked {
  readonly scene: Scene
  readonly kit: Kit
  readonly question: FindQuestion
}

/** A piece of work: one part of a trunk's setups, or the nearest miss of one limit. */
export type Task =
  | { readonly kind: "part"; readonly trunk: number; readonly part: number; readonly parts: number }
  | { readonly kind: "miss"; readonly limit: number }

/** What a worker is told. `demand`: the last of the best so far, which others must beat. */
export type Order =
  | { readonly kind: "ask"; readonly asked: Asked }
  | { readonly kind: "take"; readonly task: Task; readonly demand: Found | null }
  | { readonly kind: "demand"; readonly demand: Found }

/** What a worker says. `setups` holds those of `found` it has not told of before. */
export type Report =
  /** Nothing but that it is there. */
  | { readonly kind: "alive" }
  | {
      readonly kind: "ready"
      /** Trunks with something to find, the most promising first. */
      readonly trunks: readonly number[]
      readonly combinations: number
      /** Setups in the other trunks, none of which can meet the limits. */
      readonly covered: number
      readonly limits: number
    }
  | { readonly kind: "refused"; readonly fault: SpaceFault }
  | {
      readonly kind: "progress" | "done"
      /** Setups dealt with in this task so far. */
      readonly covered: number
      readonly found: readonly Found[]
      readonly setups: readonly FoundSetup[]
    }
  | { readonly kind: "missed"; readonly miss: Miss }
