import type { StoreApi } from "zustand/vanilla"
import type { BenchState } from "../state/bench"

/** Keeps `data-theme` on the document at the chosen theme or, on auto, at the system's. */
export function followTheme(store: StoreApi<BenchState>): void {
  const dark = window.matchMedia("(prefers-color-scheme: dark)")
  const apply = () => {
    const { theme } = store.getState().preferences
    const wanted = theme === "auto" ? (dark.matches ? "dark" : "light") : theme
    if (document.documentElement.dataset.theme !== wanted) document.documentElement.dataset.theme = wanted
  }
  apply()
  dark.addEventListener("change", apply)
  store.subscribe(apply)
}
