import { type Overlay, overlays, type Preferences, preferencesIn } from "../state/preferences"
import { locale } from "../words/language"
import type { BrowserStore } from "./browserStore"

const KEY = "preferences"

type Stored = Readonly<Record<string, unknown>>

/** Each choice by itself, so that one this version does not know falls back without taking the others with it. */
export function readPreferences(store: BrowserStore, region = locale): Preferences {
  const read = stored(store)
  const defaults = preferencesIn(region)
  const choice = <K extends "massUnit" | "lengthUnit" | "forceUnit" | "theme" | "language">(
    key: K,
    known: readonly Preferences[K][],
  ) => known.find((value) => value === read[key]) ?? defaults[key]
  const shown = (read.show !== null && typeof read.show === "object" ? read.show : {}) as Stored
  const flag = (value: unknown, fallback: boolean) => (typeof value === "boolean" ? value : fallback)
  const show = overlays.map((name): [Overlay, boolean] => [name, flag(shown[name], defaults.show[name])])
  return {
    massUnit: choice("massUnit", ["g", "oz"]),
    lengthUnit: choice("lengthUnit", ["mm", "in"]),
    forceUnit: choice("forceUnit", ["N", "lbf"]),
    theme: choice("theme", ["auto", "light", "dark"]),
    language: choice("language", ["auto", "en", "fr"]),
    pairArms: flag(read.pairArms, defaults.pairArms),
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
