/**
 * The language the page speaks, chosen once when its first script runs: every sentence may then be a plain constant. The
 * page loads again when another is chosen. Outside a page, in the command line and the tests, it is English.
 */

/** Each language under its own name, as somebody who reads only that one looks for it. */
export const languages = { en: "English", fr: "Français" } as const
export type Language = keyof typeof languages

/** Which language was chosen, or that the browser's own decides. */
export type LanguageChoice = "auto" | Language

const isLanguage = (name: unknown): name is Language => typeof name === "string" && Object.hasOwn(languages, name)

/** What a page has to choose by. */
export interface Asked {
  /** The address's query: `?language=fr` asks for this visit alone. */
  readonly search: string
  /** The kept preferences, as written; null when there are none. */
  readonly preferences: string | null
  /** The browser's languages, the most wanted first: `["fr-CA", "en"]`. */
  readonly browser: readonly string[]
}

/** The language of a page: the address decides, then the choice kept, then the browser; English when none is spoken here. */
export function languageOf({ search, preferences, browser }: Asked): Language {
  const wanted = new URLSearchParams(search).get("language")
  if (isLanguage(wanted)) return wanted
  const kept = keptChoice(preferences)
  if (isLanguage(kept)) return kept
  return browser.map(spokenIn).find(isLanguage) ?? "en"
}

function keptChoice(preferences: string | null): unknown {
  try {
    return (JSON.parse(preferences ?? "{}") as { language?: unknown } | null)?.language
  } catch {
    return undefined
  }
}

/** "fr" of "fr-CH". */
const spokenIn = (tag: string): string => tag.toLowerCase().split(/[^a-z]/)[0]!

/**
 * The locale that numbers and dates follow: the reader's own region where it goes with the language, as `fr-CH`. Some
 * systems name theirs in a way that is no locale, as `en-US@posix`.
 */
export function localeOf(language: Language, browser: readonly string[]): string {
  const own = browser.find((tag) => spokenIn(tag) === language && isLocale(tag))
  return own ?? language
}

function isLocale(tag: string): boolean {
  try {
    return Intl.getCanonicalLocales(tag).length > 0
  } catch {
    return false
  }
}

function asked(): Asked {
  return { search: location.search, preferences: kept(), browser: navigator.languages }
}

function kept(): string | null {
  try {
    return localStorage.getItem("bow-balance-bench/preferences")
  } catch {
    return null
  }
}

const page = typeof document === "undefined" ? null : asked()
const wanted: Language = page === null ? "en" : languageOf(page)

/**
 * Awaited here, so that whatever imports words waits for them. The other language's script imports nothing of the
 * page's, which would be waiting for it. Out of reach, the page speaks English rather than not at all.
 */
const french: Readonly<Record<string, unknown>> | null =
  wanted === "fr"
    ? await import("./fr").then(
        (fetched) => fetched.french,
        () => null,
      )
    : null

/** What the page speaks. */
export const language: Language = french === null ? "en" : "fr"
export const locale: string = localeOf(language, page?.browser ?? ["en-GB"])

/**
 * A part of the catalogue, in the language of the page.
 *
 * @param name its file's name, under which the other languages have it too
 * @param english its words: sentences, and functions that make a sentence around what is already put in words
 */
export const spoken = <T extends object>(name: string, english: T): T => (french?.[name] as T | undefined) ?? english
