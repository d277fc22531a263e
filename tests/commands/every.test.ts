import { readdirSync } from "node:fs"
import { join } from "node:path"
import { expect, test } from "vitest"
import type { Command, NamedCommand } from "../../src/commands/command"
import * as shortcuts from "../../src/app/shortcuts"

const folder = join(import.meta.dirname, "../../src/commands")

const isCommand = (value: unknown): value is Command<unknown> | NamedCommand<unknown> =>
  typeof value === "object" && value !== null && "id" in value && "run" in value

const modules: Record<string, unknown>[] = [shortcuts]
for (const file of readdirSync(folder)) modules.push(await import(join(folder, file)))
const every = modules.flatMap((module) => Object.values(module).filter(isCommand))

const twice = (values: readonly string[]) => values.filter((value, index) => values.indexOf(value) !== index)

test("every command has an id of its own, and a label wherever it brings one", () => {
  expect(every.length).toBeGreaterThan(20)
  expect(twice(every.map(({ id }) => id))).toEqual([])
  for (const { id } of every) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/)
  const labels = every.filter((command) => "label" in command).map(({ label }) => label)
  expect(labels.length).toBeGreaterThan(3)
  for (const label of labels) expect(label.trim()).not.toBe("")
})

test("no two commands have the same shortcut, and each is written as a key press is read", () => {
  const keys = every.flatMap(({ shortcut }) => shortcut ?? [])
  expect(keys).toContain("mod+z")
  expect(twice(keys)).toEqual([])
  for (const shortcut of keys) {
    const steps = shortcut.split("+")
    const pressed = {
      key: steps.at(-1)!,
      ctrlKey: steps.includes("mod"),
      metaKey: false,
      altKey: steps.includes("alt"),
      shiftKey: steps.includes("shift"),
    }
    expect(shortcuts.chord(pressed)).toBe(shortcut)
  }
})
