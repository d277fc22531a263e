import { defaultPreferences, type Overlay, overlays, type Preferences } from "../state/preferences"
import type { BrowserStore } from "./browserStore"

const KEY = "preferences"

type Stored = Readonly<Record<string, unknown>>

/** Each choice by itself, so that one this version does not know falls back without taking the others with it. */
export function readPreferences(store: BrowserStore): Preferences {
  const read = stored(store)
  const choice = <K extends "massUnit" | "lengthUnit" | "forceUnit" | "theme">(
    key: K,
    known: readonly Preferences[K][],
  ) => known.find((value) => value === read[key]) ?? defaultPreferences[key]
  const shown = (read.show !== null && typeof read.show === "object" ? read.show : {}) as Stored
  const flag = (value: unknown, fallback: boolean) => (typeof value === "boolean" ? value : fallback)
  const show = overlays.map((name): [Overlay, boolean] => [name, flag(shown[name], defaultPreferences.show[name])])
  return {
    massUnit: choice("massUnit", ["g", "oz"]),
    lengthUnit: choice("lengthUnit", ["mm", "in"]),
    forceUnit: choice("forceUnit", ["N", "lbf"]),
    theme: choice("theme", ["auto", "light", "dark"]),
    pairArms: flag(read.pairArms, defaultPreferences.pairArms),
    show: Object.fromEntries(show) as Record<Overlay, boolean>,
  }
}

function stored(store: BrowserStore): Stored {
  try {
    const read: unknown = JSON.parse(store.read(KEY) ?? "{}")
    return read !== null && typeof read === "object" ? (read as Stored) : {}
  } catch {
    return {}
  }
}

export const writePreferences = (store: BrowserStore, preferences: Preferences): boolean =>
  store.write(KEY, JSON.stringify(preferences))
