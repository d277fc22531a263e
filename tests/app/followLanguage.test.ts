import { expect, test } from "vitest"
import { followLanguage } from "../../src/app/followLanguage"
import { firstScene } from "../../src/app/start"
import { createBench } from "../../src/state/bench"

function following(href: string, languages: readonly string[]) {
  const bench = createBench(firstScene)
  const done: string[] = []
  const location = { href, search: new URL(href).search, reload: () => done.push("reload") }
  const history = {
    state: null,
    replaceState: (_: unknown, __: string, to?: string | URL | null) => done.push(`${to}`),
  }
  followLanguage(bench, { location, history, languages }, "en")
  return { bench, done }
}

test("a language the page does not speak has it load again, and one asked for in the address gives way", () => {
  const { bench, done } = following("https://bench.example/?language=en&scene=two#setup=1", ["en-GB"])
  bench.setPreferences({ language: "fr" })
  expect(done).toEqual(["https://bench.example/?scene=two#setup=1", "reload"])
})

test("a choice that comes to the language spoken, and any other preference, leaves the page alone", () => {
  const { bench, done } = following("https://bench.example/", ["en-GB"])
  bench.setPreferences({ language: "en" })
  bench.setPreferences({ theme: "dark" })
  bench.setPreferences({ language: "auto" })
  expect(done).toEqual([])
})
