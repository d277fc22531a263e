import { useSyncExternalStore } from "react"
import type { Measurement } from "../../scene/schema"

/** What is typed and not yet put on the bench. It outlives the sheet, the tab and, where the browser keeps it, the page. */
export interface Draft {
  /** By field, in the file's unit; a field that cannot be read has none. */
  readonly values: Readonly<Record<string, number>>
  /** By field, what stands in it while it is being typed. */
  readonly texts: Readonly<Record<string, string>>
  readonly words: Readonly<Record<string, string>>
}

export const NO_DRAFT: Draft = { values: {}, texts: {}, words: {} }

/** What a reading in the making is, besides its numbers. */
export interface ReadingDraft extends Draft {
  readonly kind: Measurement["kind"]
  readonly on: Measurement["on"]
  readonly axis: "pitch" | "yaw" | "roll"
  /** A named point's key, or `own` for a typed place. */
  readonly point: string
  readonly cantRead: boolean
  /** The reading that is being changed; null for a new one. */
  readonly editing: number | null
}

export interface Drafts {
  readonly sheet: { readonly page: "session" | "log" }
  readonly reading: ReadingDraft
  readonly tried: Draft & { readonly editing: number | null }
}

export const NO_DRAFTS: Drafts = {
  sheet: { page: "session" },
  reading: {
    ...NO_DRAFT,
    kind: "scale",
    on: "rigged",
    axis: "pitch",
    point: "nock",
    cantRead: true,
    editing: null,
  },
  tried: { ...NO_DRAFT, editing: null },
}

const KEY = "bow-balance-bench/measure-drafts"

let now: Drafts | null = null
const listeners = new Set<() => void>()

/** What the browser kept, laid over empty drafts so that one of an older page still has every key. */
function kept(): Drafts {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "{}") as Partial<Drafts>
    return {
      sheet: { ...NO_DRAFTS.sheet, ...found.sheet },
      reading: { ...NO_DRAFTS.reading, ...found.reading },
      tried: { ...NO_DRAFTS.tried, ...found.tried },
    }
  } catch {
    return NO_DRAFTS
  }
}

const current = (): Drafts => {
  now ??= kept()
  return now
}

/** Changes a draft, by its changed keys or by what they are to be from what it is. */
export function changeDraft<K extends keyof Drafts>(
  which: K,
  change: Partial<Drafts[K]> | ((draft: Drafts[K]) => Partial<Drafts[K]>),
): void {
  const before = current()
  const changes = typeof change === "function" ? change(before[which]) : change
  now = { ...before, [which]: { ...before[which], ...changes } }
  try {
    localStorage.setItem(KEY, JSON.stringify(now))
  } catch {
    // Full or forbidden: the drafts last as long as the page.
  }
  for (const listener of [...listeners]) listener()
}

const subscribe = (listener: () => void) => {
  listeners.add(listener)
  return () => listeners.delete(listener)
}

export const useDraft = <K extends keyof Drafts>(which: K): Drafts[K] =>
  useSyncExternalStore(subscribe, () => current()[which])
