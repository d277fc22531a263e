import { failure, type Result } from "../scene/errors"
import { validateScene } from "../scene/parse"
import type { Scene } from "../scene/schema"
import type { Bench } from "../state/bench"
import { edits } from "../words/edits"

/** The lists of a scene that a coach adds to: what was read off the real bow, and the setups that were tried. */
type List = "measurements" | "log"
type Entry<L extends List> = NonNullable<Scene[L]>[number]

export const listOf = <L extends List>(bench: Bench, list: L): readonly Entry<L>[] =>
  (bench.store.getState().scene[list] ?? []) as readonly Entry<L>[]

/**
 * Puts a list in another's place as one undo step; one that no file could hold is refused. A list without entries is not
 * in the scene at all.
 */
export function putList<L extends List>(
  bench: Bench,
  list: L,
  label: string,
  entries: readonly Entry<L>[],
): Result<void> {
  const { [list]: _, ...others } = bench.store.getState().scene
  const valid = validateScene(entries.length === 0 ? others : { ...others, [list]: entries })
  if (!valid.ok) return valid
  return bench.change(label, (draft) => {
    if (entries.length === 0) delete draft[list]
    else Object.assign(draft, { [list]: structuredClone(entries) })
  })
}

/** Puts `next` in an entry's place, or nothing for null. A place where nothing stands is refused. */
export function putEntry<L extends List>(
  bench: Bench,
  list: L,
  place: number,
  label: string,
  next: (entry: Entry<L>) => Entry<L> | null,
): Result<void> {
  const entries = listOf(bench, list)
  const found = entries[place]
  if (found === undefined) return noSuchEntry(list, place)
  const changed = next(found)
  return putList(
    bench,
    list,
    label,
    entries.flatMap((each, index) => (index !== place ? [each] : changed === null ? [] : [changed])),
  )
}

export const noSuchEntry = (list: List, place: number): Result<never> =>
  failure({ code: "not-allowed", path: `${list}[${place}]`, message: edits.noEntry })
