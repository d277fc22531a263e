import * as z from "zod/mini"
import { defaultPreferences, type Overlay, overlays, type Preferences } from "../state/preferences"
import type { BrowserStore } from "./browserStore"

const KEY = "preferences"

/** Each choice by itself, so that one this version does not know falls back without taking the others with it. */
const stored = z.object({
  massUnit: z.catch(z.enum(["g", "oz"]), defaultPreferences.massUnit),
  lengthUnit: z.catch(z.enum(["mm", "in"]), defaultPreferences.lengthUnit),
  forceUnit: z.catch(z.enum(["N", "lbf"]), defaultPreferences.forceUnit),
  theme: z.catch(z.enum(["auto", "light", "dark"]), defaultPreferences.theme),
  pairArms: z.catch(z.boolean(), defaultPreferences.pairArms),
  show: z.catch(z.record(z.string(), z.boolean()), {}),
})

export function readPreferences(store: BrowserStore): Preferences {
  const text = store.read(KEY)
  if (text === null) return defaultPreferences
  try {
    const read = stored.parse(JSON.parse(text))
    const show = overlays.map((name): [Overlay, boolean] => [name, read.show[name] ?? defaultPreferences.show[name]])
    return { ...read, show: Object.fromEntries(show) as Record<Overlay, boolean> }
  } catch {
    return defaultPreferences
  }
}

export const writePreferences = (store: BrowserStore, preferences: Preferences): boolean =>
  store.write(KEY, JSON.stringify(preferences))
