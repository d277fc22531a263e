import { sameValue } from "../../state/same"
import type { Edited } from "./drafts"

/**
 * Where in the list the entry that a draft changes still stands; null for none, or once it is another one: undone, or of
 * another bow. Whether a reading counts may change meanwhile.
 */
export function editedPlace<T extends object>(
  editing: Edited<T> | null,
  list: readonly T[] | undefined,
): number | null {
  if (editing === null) return null
  const now = list?.[editing.place]
  return now !== undefined && sameValue(counted(now), counted(editing.was)) ? editing.place : null
}

const counted = <T extends object>(entry: T) => ({ ...entry, excluded: false })

/** The edit after an entry was removed from its list: gone with it, or moved up. */
export function afterRemoval<T>(editing: Edited<T> | null, removed: number): Edited<T> | null {
  if (editing === null || editing.place === removed) return null
  return editing.place < removed ? editing : { ...editing, place: editing.place - 1 }
}
