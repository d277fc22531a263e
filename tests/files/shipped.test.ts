import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { afterEach, describe, expect, test, vi } from "vitest"
import { fetchShipped, shippedScenes } from "../../src/files/shipped"
import { parseScene } from "../../src/scene/parse"
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
