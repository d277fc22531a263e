import { expect, test } from "vitest"
import { languageOf, localeOf } from "../../src/words/language"

const nothing = { search: "", preferences: null, browser: [] }

test("the address decides the language, then the choice kept, then the browser's first language spoken here", () => {
  const kept = JSON.stringify({ language: "fr" })
  expect(languageOf({ search: "?language=en", preferences: kept, browser: ["fr"] })).toBe("en")
  expect(languageOf({ search: "?scene=x", preferences: kept, browser: ["en-GB"] })).toBe("fr")
  expect(languageOf({ ...nothing, browser: ["de", "fr-CH", "en"] })).toBe("fr")
  expect(languageOf({ ...nothing, preferences: JSON.stringify({ language: "auto" }), browser: ["fr"] })).toBe("fr")
})

test("a language that is not spoken here, and preferences that cannot be read, leave the next to decide", () => {
  expect(languageOf({ search: "?language=tlh", preferences: null, browser: ["fr"] })).toBe("fr")
  for (const preferences of ["{ half", "7", "null", '{"language":"toString"}']) {
    expect(languageOf({ ...nothing, preferences, browser: ["fr"] })).toBe("fr")
  }
  expect(languageOf({ ...nothing, browser: ["de", "ja"] })).toBe("en")
})

test("numbers follow the reader's region where it goes with the language", () => {
  expect(localeOf("fr", ["en-GB", "fr-CH", "fr"])).toBe("fr-CH")
  expect(localeOf("fr", ["en-GB"])).toBe("fr")
})

test("what is no locale, and another language that begins alike, are passed over", () => {
  expect(localeOf("en", ["en-US@posix", "en-GB"])).toBe("en-GB")
  expect(localeOf("en", ["en_US.UTF-8"])).toBe("en")
  expect(localeOf("fr", ["frr", "fr-CA"])).toBe("fr-CA")
  expect(languageOf({ ...nothing, browser: ["frr-DE", "en-US@posix"] })).toBe("en")
})
