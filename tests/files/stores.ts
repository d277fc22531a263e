import type { BrowserStore } from "../../src/files/browserStore"

/** A browser store in memory, with its texts to look at. */
export function memoryStore(): BrowserStore & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>()
  return {
    texts,
    read: (key) => texts.get(key) ?? null,
    write(key, text) {
      texts.set(key, text)
      return true
    },
  }
}

/** A browser that keeps nothing. */
export const refusingStore: BrowserStore = { read: () => null, write: () => false }
