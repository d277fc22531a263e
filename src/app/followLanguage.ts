import { languageOf, type Language, language as spoken } from "../words/language"
import type { Bench } from "../state/bench"

/** What of the page's surroundings is needed to have it load again in another language. */
export interface Reloading {
  readonly location: Pick<Location, "href" | "search" | "reload">
  readonly history: Pick<History, "replaceState" | "state">
  readonly languages: readonly string[]
}

/**
 * Loads the page again once a language is chosen that it does not speak: every sentence on it was put in words in the
 * other. What is on the bench is kept as at any leaving. A language asked for in the address gives way to the choice.
 * Returns a function that stops it.
 */
export function followLanguage(
  bench: Bench,
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
    address.searchParams.delete("language")
    history.replaceState(history.state, "", address)
    location.reload()
  })
}
