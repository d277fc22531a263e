import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { afterEach, describe, expect, test, vi } from "vitest"
import { fetchShipped, shippedScenes } from "../../src/files/shipped"
import { parseScene } from "../../src/scene/parse"
import { french } from "../../src/words/fr"
import { shipped } from "../../src/words/shipped"
import { serveScenes } from "./served"

const folder = join(import.meta.dirname, "../../scenes")

afterEach(() => vi.unstubAllGlobals())

test("the list gives every scene's name for the address and its name for people", async () => {
  serveScenes()
  const files = readdirSync(folder).filter((name) => name.endsWith(".json"))
  const listed = await shippedScenes()
  expect(listed.map(({ id }) => `${id}.json`)).toEqual(files)
  expect(listed.map(({ name }) => name)).toEqual(
    files.map((name) => JSON.parse(readFileSync(join(folder, name), "utf8")).name),
  )
})

test.each(["scenes", "scenes/kits"] as const)(
  "every file of %s has a name in each language, the English one the file's own",
  (name) => {
    const place = join(folder, "..", name)
    const files = readdirSync(place).filter((file) => file.endsWith(".json"))
    const own = files.map((file) => [file.slice(0, -5), JSON.parse(readFileSync(join(place, file), "utf8")).name])
    expect(own.length).toBeGreaterThan(1)
    expect(shipped[name]).toEqual(Object.fromEntries(own))
    expect(Object.keys(french.shipped[name]).sort()).toEqual(Object.keys(shipped[name]).sort())
  },
)

test("a scene that the catalogue does not know is listed by its file's own name", async () => {
  const list = [{ file: "seventh-bow.json", name: "Seventh bow" }]
  vi.stubGlobal("fetch", () => Promise.resolve(new Response(JSON.stringify(list))))
  expect(await shippedScenes()).toEqual([{ id: "seventh-bow", name: "Seventh bow" }])
})

test("a scene is found by its name, with or without .json", async () => {
  serveScenes()
  const expected = parseScene(readFileSync(join(folder, "beginner-one-rod.json"), "utf8"))
  expect(expected.ok).toBe(true)
  expect(await fetchShipped("beginner-one-rod")).toEqual(expected)
  expect(await fetchShipped("beginner-one-rod.json")).toEqual(expected)
})

describe("a scene that cannot be had is an error with its name in it:", () => {
  test.each([
    ["no such scene", "no-such-scene", /"no-such-scene" does not come with the bench/],
    ["a name that leads elsewhere", "../package", /"..\/package" is not the name of a scene/],
    ["another server", "https://example.org/x", /is not the name of a scene/],
    ["nothing", "", /"" is not the name of a scene/],
  ])("%s", async (_what, asked, message) => {
    serveScenes()
    const fetched = await fetchShipped(asked)
    expect(fetched.ok === false && fetched.errors).toMatchObject([{ message: expect.stringMatching(message) }])
  })

  test("without a network", async () => {
    vi.stubGlobal("fetch", () => Promise.reject(new TypeError("offline")))
    const fetched = await fetchShipped("beginner-one-rod")
    expect(fetched.ok === false && fetched.errors[0]?.message).toBe(
      'scene "beginner-one-rod" could not be fetched; is the network there?',
    )
    await expect(shippedScenes()).rejects.toThrow("offline")
  })
})
