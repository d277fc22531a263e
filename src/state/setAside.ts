import type { Scene } from "../scene/schema"
import { sameValue } from "./same"

/** Unsaved work that made room for another scene; kept in the browser until it is brought back or discarded. */
export interface KeptWork {
  readonly scene: Scene
  readonly fileName: string | null
  /** When it was last on the bench, milliseconds since 1970. */
  readonly at: number
}

/** More than anyone leaves lying about, and far below what a browser keeps. */
export const MOST_KEPT = 8

/** The list without work that says the same, whenever it was kept. */
export const without = (list: readonly KeptWork[], { scene }: Pick<KeptWork, "scene">): readonly KeptWork[] =>
  list.filter((other) => !sameValue(other.scene, scene))

/** The list with this work first, once; past `MOST_KEPT` the oldest goes. */
export const withWork = (list: readonly KeptWork[], work: KeptWork): readonly KeptWork[] =>
  [work, ...without(list, work)].slice(0, MOST_KEPT)
