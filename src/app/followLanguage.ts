import { languageOf, type Language, language as spoken } from "../words/language"
import { type Bench, hasUnsavedChanges } from "../state/bench"

/** What of the page's surroundings is needed to have it load again in another language. */
export interface Reloading {
  readonly location: Pick<Location, "href" | "search" | "reload">
  readonly history: Pick<History, "replaceState" | "state">
  readonly languages: readonly string[]
}

/**
 * Loads the page again once a language is chosen that it does not speak: every sentence on it was put in words in the
 * other. What is on the bench is kept first and is what comes back, whatever else the address asks for. Where the browser
 * keeps nothing, the address asks for the language, and work that would be lost holds the page.
 * Returns a function that stops it.
 *
 * @param keep writes what is on the bench and the preferences to the browser; false where it does not take them
 */
export function followLanguage(
  bench: Bench,
  keep: () => boolean,
  { location, history, languages }: Reloading = {
    location: window.location,
    history: window.history,
    languages: navigator.languages,
  },
  now: Language = spoken,
): () => void {
  return bench.store.subscribe(({ preferences }, before) => {
    if (preferences.language === before.preferences.language) return
    const chosen = languageOf({ search: "", preferences: JSON.stringify(preferences), browser: languages })
    if (chosen === now) return
    const address = new URL(location.href)
    if (keep()) for (const asked of ["language", "scene", "lesson"]) address.searchParams.delete(asked)
    else if (hasUnsavedChanges(bench.store.getState())) return
    else address.searchParams.set("language", chosen)
    history.replaceState(history.state, "", address)
    location.reload()
  })
}
