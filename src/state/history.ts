import { applyPatches, type Patch } from "immer"
import type { Scene } from "../scene/schema"
import type { KeptWork } from "./setAside"

/** Which file the bench holds, and what lies beside it. */
export interface FileMark {
  readonly fileName: string | null
  /** The scene as that file has it; another scene means unsaved changes. */
  readonly savedScene: Scene | null
  /** Unsaved work that made room for another scene, the latest first. */
  readonly setAside: readonly KeptWork[]
}

/** One undoable step: what it did to the scene and what takes it back, as patches. */
export interface Entry {
  readonly label: string
  readonly forward: readonly Patch[]
  readonly backward: readonly Patch[]
  /** Opening another scene and discarding one only: the file and what lies beside it, before and after. */
  readonly file?: { readonly before: Partial<FileMark>; readonly after: Partial<FileMark> }
}

/** The step that puts another scene on the bench: the one kind that replaces the whole scene. */
export const replacement = (label: string, from: Scene, to: Scene, file: Entry["file"]): Entry => ({
  label,
  forward: [{ op: "replace", path: [], value: to }],
  backward: [{ op: "replace", path: [], value: from }],
  file,
})

export interface History {
  /** Oldest first. */
  readonly past: readonly Entry[]
  /** Next to be redone first. */
  readonly future: readonly Entry[]
}

export const NO_HISTORY: History = { past: [], future: [] }

/** Steps kept; far beyond what anyone walks back, and small, since an entry holds only what changed. */
const MAX_ENTRIES = 500

/** A new step; whatever had been undone is gone. */
export const remember = (history: History, entry: Entry): History => ({
  past: [...history.past, entry].slice(-MAX_ENTRIES),
  future: [],
})

export function stepBack(history: History, scene: Scene): { history: History; scene: Scene; entry: Entry } | null {
  const entry = history.past.at(-1)
  if (entry === undefined) return null
  return {
    entry,
    scene: applyPatches(scene, [...entry.backward]),
    history: { past: history.past.slice(0, -1), future: [entry, ...history.future] },
  }
}

export function stepForward(history: History, scene: Scene): { history: History; scene: Scene; entry: Entry } | null {
  const [entry, ...rest] = history.future
  if (entry === undefined) return null
  return {
    entry,
    scene: applyPatches(scene, [...entry.forward]),
    history: { past: [...history.past, entry], future: rest },
  }
}

/**
 * Two successive changes as one. Where both replace the same values, as every move of a drag does, only the last
 * new values and the first old ones are kept, so a long drag is as small as a short one.
 */
export function join(first: Entry, second: Entry): Entry {
  const forward = samePlaces(first.forward, second.forward) ? second.forward : [...first.forward, ...second.forward]
  const backward = samePlaces(first.backward, second.backward)
    ? first.backward
    : [...second.backward, ...first.backward]
  return { label: second.label, forward, backward }
}

const place = (patch: Patch): string => patch.path.join("/")

const samePlaces = (a: readonly Patch[], b: readonly Patch[]): boolean =>
  a.length === b.length &&
  a.every((patch, index) => patch.op === "replace" && b[index]?.op === "replace" && place(patch) === place(b[index]!))
