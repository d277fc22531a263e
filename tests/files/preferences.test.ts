import { expect, test } from "vitest"
import { readPreferences, writePreferences } from "../../src/files/preferences"
import { defaultPreferences, type Preferences } from "../../src/state/preferences"
import { memoryStore, refusingStore } from "./stores"

/** None of them the default. */
const chosen: Preferences = {
  massUnit: "oz",
  lengthUnit: "in",
  forceUnit: "lbf",
  theme: "dark",
  language: "fr",
  pairArms: false,
  show: { plumb: false, target: false, ellipsoid: true, arcs: false, fullDraw: false, ground: false, labels: false },
}

const reading = (kept: unknown) => {
  const store = memoryStore()
  store.write("preferences", typeof kept === "string" ? kept : JSON.stringify(kept))
  return readPreferences(store)
}

test("every choice comes back", () => {
  const store = memoryStore()
  expect(writePreferences(store, chosen)).toBe(true)
  expect(readPreferences(store)).toEqual(chosen)
})

test.each(Object.keys(chosen) as (keyof Preferences)[])(
  "a %s this bench does not know, or none at all, falls back by itself",
  (key) => {
    const { [key]: _, ...without } = chosen
    const expected = { ...chosen, [key]: defaultPreferences[key] }
    expect(reading(without)).toEqual(expected)
    expect(reading({ ...chosen, [key]: "furlong" })).toEqual(expected)
    expect(reading({ ...chosen, [key]: null })).toEqual(expected)
  },
)

test("each thing shown falls back by itself, and one no longer known is dropped", () => {
  const { arcs: _, ...some } = chosen.show
  expect(reading({ ...chosen, show: { ...some, halo: true } }).show).toEqual({ ...chosen.show, arcs: true })
})

test("what cannot be read, and a browser that keeps nothing, give the defaults", () => {
  for (const kept of ["{ half", "7", "null", [2, 3]]) expect(reading(kept)).toEqual(defaultPreferences)
  expect(readPreferences(memoryStore())).toEqual(defaultPreferences)
  expect(readPreferences(refusingStore)).toEqual(defaultPreferences)
})

test("who has chosen nothing gets ounces, inches and pounds in the United States and metric units elsewhere", () => {
  const unitsIn = (locale: string) => {
    const { massUnit, lengthUnit, forceUnit } = readPreferences(memoryStore(), locale)
    return [massUnit, lengthUnit, forceUnit]
  }
  expect(unitsIn("en-US")).toEqual(["oz", "in", "lbf"])
  for (const locale of ["en-GB", "fr-FR", "fr-CA", "en"]) expect(unitsIn(locale)).toEqual(["g", "mm", "N"])
})
