import { expect, test } from "vitest"
import { browserStore } from "../../src/files/browserStore"

test("texts come back under the bench's own names, apart from others at the same address", () => {
  const kept = new Map<string, string>([["autosave", "somebody else's"]])
  const store = browserStore(() => ({
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, text) => void kept.set(key, text),
  }))
  expect(store.read("autosave")).toBeNull()
  expect(store.write("autosave", "ours")).toBe(true)
  expect(store.read("autosave")).toBe("ours")
  expect(kept.get("autosave")).toBe("somebody else's")
})

test("a storage that throws is read as empty and says that it did not take the text", () => {
  const forbidden = () => {
    throw new Error("SecurityError")
  }
  for (const storage of [forbidden, () => ({ getItem: forbidden, setItem: forbidden })]) {
    const store = browserStore(storage)
    expect(store.read("autosave")).toBeNull()
    expect(store.write("autosave", "ours")).toBe(false)
  }
})

test("a page without storage keeps nothing and does not fail", () => {
  // Node has no localStorage, as some embedded browsers have none.
  expect(browserStore(() => undefined as unknown as Storage).read("autosave")).toBeNull()
  expect(browserStore(() => undefined as unknown as Storage).write("autosave", "ours")).toBe(false)
})
