import { describe, expect, test } from "vitest"
import { kitFrom, looksLikeKit } from "../../src/files/kitFile"
import { readKeptKit, writeKeptKit } from "../../src/files/keptKit"
import { questionFor } from "../../src/scene/find"
import { kitTable, readKit, serializeKit } from "../../src/scene/kit"
import { kitDocument } from "../scene/kit/kits"
import { fullScene } from "../state/benches"
import { memoryStore } from "./stores"

const read = readKit(kitDocument())
if (!read.ok) throw new Error("the kit is not valid")
const kit = read.value

describe("what the browser keeps", () => {
  test("kit, file name, question, and whether a search was under way, come back as they were", () => {
    const store = memoryStore()
    const question = questionFor(fullScene())
    expect(writeKeptKit(store, { kit, fileName: "mine.json", question, searching: true })).toBe(true)
    expect(readKeptKit(store)).toEqual({ kit, fileName: "mine.json", question, searching: true })
  })

  test("nothing, what is no JSON, and a question of another bench are passed over, each by itself", () => {
    const nothing = { kit: null, fileName: null, question: null, searching: false }
    const store = memoryStore()
    expect(readKeptKit(store)).toEqual(nothing)
    store.write("kit", "{")
    expect(readKeptKit(store)).toEqual(nothing)
    store.write("kit", JSON.stringify({ kit: serializeKit(kit), fileName: null, question: { speed: 3 } }))
    expect(readKeptKit(store)).toEqual({ ...nothing, kit })
    store.write("kit", JSON.stringify({ kit: "[]", fileName: "x.json", question: null }))
    expect(readKeptKit(store)).toEqual({ ...nothing, fileName: "x.json" })
  })
})

test("a kit is known by what it says it is, a table by its ending; a scene is neither", () => {
  expect(looksLikeKit("a.json", serializeKit(kit))).toBe(true)
  expect(looksLikeKit("a.csv", "anything")).toBe(true)
  expect(looksLikeKit("a.json", JSON.stringify(fullScene()))).toBe(false)
})

test("a file is read by its ending, and a table takes the file's name", () => {
  expect(kitFrom("box.json", serializeKit(kit))).toEqual({ ok: true, value: kit })
  const table = kitFrom("my box.csv", kitTable(kit))
  expect(table.ok && table.value.name).toBe("my box")
})
