/**
 * The browser's own storage, which may be full, forbidden or missing: reading then finds nothing and writing says
 * that it did not happen.
 */
export interface BrowserStore {
  read(key: string): string | null
  write(key: string, text: string): boolean
}

const PREFIX = "bow-balance-bench/"

export function browserStore(storage: () => Pick<Storage, "getItem" | "setItem"> = () => localStorage): BrowserStore {
  return {
    read(key) {
      try {
        const found = storage().getItem(PREFIX + key)
        return typeof found === "string" ? found : null
      } catch {
        return null
      }
    },
    write(key, text) {
      try {
        storage().setItem(PREFIX + key, text)
        return true
      } catch {
        return false
      }
    },
  }
}
