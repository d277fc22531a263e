import { useSyncExternalStore } from "react"
import type { Measurement, Tried } from "../../scene/schema"

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
  /** The reading that is being changed, as it was; null for a new one. */
  readonly editing: Edited<Measurement> | null
}

/** An entry of a list of the scene, by its place and by what stood there: another scene may be on the bench since. */
export interface Edited<T> {
  readonly place: number
  readonly was: T
}

export interface Drafts {
  readonly sheet: { readonly page: "session" | "log" }
  readonly reading: ReadingDraft
  readonly tried: Draft & { readonly editing: Edited<Tried> | null }
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

/** What the browser kept. */
function kept(): Drafts {
  try {
    return draftsIn(localStorage.getItem(KEY))
  } catch {
    return NO_DRAFTS
  }
}

/** Drafts from a kept text; what is missing, or of another shape than empty drafts have, is as empty drafts have it. */
export function draftsIn(text: string | null): Drafts {
  try {
    return alike(NO_DRAFTS, JSON.parse(text ?? "{}")) as Drafts
  } catch {
    return NO_DRAFTS
  }
}

/** What may stand where a word does, in the drafts' own choices. */
const choices: Readonly<Record<string, readonly string[]>> = {
  page: ["session", "log"],
  kind: ["scale", "hang", "swing", "twist"],
  on: ["riser", "bow", "rigged"],
  axis: ["pitch", "yaw", "roll"],
}

function alike(pattern: object, found: unknown): unknown {
  if (typeof found !== "object" || found === null) return pattern
  return Object.fromEntries(
    Object.entries(pattern).map(([key, usual]: [string, unknown]) => {
      const value = (found as Record<string, unknown>)[key]
      if (key === "values") return [key, of("number", value)]
      if (key === "texts" || key === "words") return [key, of("string", value)]
      if (key === "editing") return [key, isEdited(value) ? value : null]
      if (typeof usual === "object" && usual !== null) return [key, alike(usual, value)]
      const allowed = choices[key]?.includes(value as string) ?? true
      return [key, typeof value === typeof usual && allowed ? value : usual]
    }),
  )
}

const of = (type: "number" | "string", found: unknown): Record<string, unknown> =>
  Object.fromEntries(Object.entries(found ?? {}).filter(([, value]) => typeof value === type))

const isEdited = (value: unknown): boolean =>
  typeof value === "object" && value !== null && "place" in value && "was" in value && typeof value.was === "object"

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
