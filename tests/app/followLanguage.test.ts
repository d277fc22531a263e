import { expect, test } from "vitest"
import { followLanguage } from "../../src/app/followLanguage"
import { firstScene } from "../../src/app/start"
import { rename } from "../../src/commands/bench"
import { createBench } from "../../src/state/bench"

function following(href: string, languages: readonly string[], kept = true) {
  const bench = createBench(firstScene)
  const done: string[] = []
  const location = { href, search: new URL(href).search, reload: () => done.push("reload") }
  const keep = () => {
    done.push("keep")
    return kept
  }
  const history = {
    state: null,
    replaceState: (_: unknown, __: string, to?: string | URL | null) => done.push(`${to}`),
  }
  followLanguage(bench, keep, { location, history, languages }, "en")
  return { bench, done }
}

test("a language the page does not speak has it load again with what is on the bench, whatever the address asked for", () => {
  const { bench, done } = following("https://bench.example/?language=en&scene=two&lesson=3&x=5", ["en-GB"])
  bench.setPreferences({ language: "fr" })
  expect(done).toEqual(["keep", "https://bench.example/?x=5", "reload"])
})

test("where the browser keeps nothing the address asks for the language, and unsaved work holds the page", () => {
  const { bench, done } = following("https://bench.example/?scene=two", ["en-GB"], false)
  bench.setPreferences({ language: "fr" })
  expect(done).toEqual(["keep", "https://bench.example/?scene=two&language=fr", "reload"])
  bench.setPreferences({ language: "en" })
  rename.run(bench, { name: "mine" })
  bench.setPreferences({ language: "fr" })
  expect(done.slice(3)).toEqual(["keep"])
})

test("a choice that comes to the language spoken, and any other preference, leaves the page alone", () => {
  const { bench, done } = following("https://bench.example/", ["en-GB"])
  bench.setPreferences({ language: "en" })
  bench.setPreferences({ theme: "dark" })
  bench.setPreferences({ language: "auto" })
  expect(done).toEqual([])
})
