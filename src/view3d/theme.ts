import type { Looks } from "./looks"

/** Takes the picture's colours from the page's style sheet, anew whenever the page's theme changes. */
export function followTheme(looks: Looks, draw: () => void): () => void {
  const read = () => {
    looks.recolour()
    draw()
  }
  const watcher = new MutationObserver(read)
  watcher.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme", "class"] })
  const dark = matchMedia("(prefers-color-scheme: dark)")
  dark.addEventListener("change", read)
  return () => {
    watcher.disconnect()
    dark.removeEventListener("change", read)
  }
}
