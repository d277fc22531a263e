import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import AxeBuilder from "@axe-core/playwright"
import { expect, type Locator, type Page } from "@playwright/test"
import { type ReadoutKey, readouts } from "../../src/describe/readouts"
import { evaluate } from "../../src/scene/evaluate"
import { figuresOf } from "../../src/scene/figures"
import { parseScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"

const scenes = join(import.meta.dirname, "../../scenes")

/** Names in `scenes/`, as `?scene=` takes them. */
export const shippedIds = readdirSync(scenes)
  .filter((name) => name.endsWith(".json"))
  .map((name) => name.replace(/\.json$/, ""))
  .sort()

export const shippedText = (id: string): string => readFileSync(join(scenes, `${id}.json`), "utf8")

export function sceneIn(text: string): Scene {
  const read = parseScene(text)
  if (!read.ok) throw new Error(read.errors.map(({ path, message }) => `${path} ${message}`).join("; "))
  return read.value
}

/** What the report says of a scene under every live number's key; keys it has no number for are left out. */
export function reported(scene: Scene): Record<string, number> {
  const evaluation = evaluate(scene)
  if (!evaluation.ok) throw new Error(evaluation.errors[0]?.message)
  const figures = figuresOf(evaluation.value)
  const numbers = Object.entries(readouts).map(([key, { of }]): [string, number | null] => [key, of(figures)])
  return Object.fromEntries(numbers.filter((entry): entry is [string, number] => entry[1] !== null))
}

/** Opens the page and waits until its first picture, its handles and its numbers stand. */
export async function open(page: Page, address = "./"): Promise<void> {
  await page.goto(address)
  await untilReady(page)
}

export async function untilReady(page: Page): Promise<void> {
  await expect(page.locator("html")).toHaveAttribute("data-ready", "true", { timeout: 30_000 })
}

/** Opens the page with the flat drawing, which stands at once: for what is no matter of the solid picture. */
export async function openFlat(page: Page, address = "./"): Promise<void> {
  await withoutWebGl(page)
  await open(page, address)
}

/** The number a readout stands for, unrounded. */
export async function numberShown(page: Page, key: ReadoutKey): Promise<number> {
  return Number(await page.locator(`[data-readout="${key}"]`).getAttribute("data-value"))
}

/** Every live number of the page by key, all of one moment. Fails where a key stands twice. */
export async function numbersShown(page: Page): Promise<Record<string, number>> {
  const entries = await page
    .locator("[data-readout]")
    .evaluateAll((elements) =>
      elements.map((element): [string, number] => [
        element.getAttribute("data-readout") ?? "",
        Number(element.getAttribute("data-value")),
      ]),
    )
  const keys = entries.map(([key]) => key)
  expect(
    keys.filter((key, index) => keys.indexOf(key) !== index),
    "numbers that stand twice",
  ).toEqual([])
  return Object.fromEntries(entries)
}

/**
 * Numbers of two runs of the same formulas agree to this share of themselves, or this much where they are below one:
 * the limbs' solver starts from wherever it was last.
 */
const SAME = 1e-7

export function expectSameNumbers(shown: Record<string, number>, expected: Record<string, number>): void {
  expect(Object.keys(shown).sort()).toEqual(Object.keys(expected).sort())
  for (const [key, value] of Object.entries(expected)) {
    const apart = Math.abs((shown[key] ?? Number.NaN) - value)
    expect(apart, `${key}: ${shown[key]} shown, ${value} expected`).toBeLessThan(SAME * Math.max(1, Math.abs(value)))
  }
}

export const handle = (page: Page, key: string): Locator => page.locator(`[data-handle="${key}"]`)

export const handleValue = async (at: Locator): Promise<number> => Number(await at.getAttribute("aria-valuenow"))

/** Presses a key so many times with the focus on a handle of the picture. */
export async function press(page: Page, key: string, keys: string, times = 1): Promise<void> {
  await handle(page, key).focus()
  for (let count = 0; count < times; count++) await page.keyboard.press(keys)
}

/** Drops a text as a file on the page; `hanging` runs while it hangs over it. */
export async function dropFile(page: Page, name: string, text: string, hanging?: () => Promise<void>): Promise<void> {
  const data = await page.evaluateHandle(
    ([fileName, content]) => {
      const transfer = new DataTransfer()
      transfer.items.add(new File([content!], fileName!, { type: "application/json" }))
      return transfer
    },
    [name, text],
  )
  await page.dispatchEvent("body", "dragover", { dataTransfer: data })
  await hanging?.()
  await page.dispatchEvent("body", "drop", { dataTransfer: data })
}

/** Picks a text as a file through the Open button. */
export async function openFile(page: Page, name: string, text: string): Promise<void> {
  const chooser = page.waitForEvent("filechooser")
  await page.getByRole("button", { name: "Open…" }).click()
  await (await chooser).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) })
}

export const nameField = (page: Page): Locator => page.getByLabel("Name of this setup")

/** What stands in the way of assistive technology, on the page or within a part of it: serious or worse, one line each. */
export async function barriers(page: Page, within = "html"): Promise<string[]> {
  // The page has no frames, so nothing has to be gathered in a second, blank page, which would take three times as long.
  // What is not looked at need not be described: half of the work.
  const { violations } = await new AxeBuilder({ page })
    .setLegacyMode()
    .options({ resultTypes: ["violations"] })
    .include(within)
    .analyze()
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(" ")} ${failureSummary?.replaceAll("\n", " ")}`),
    )
}

/** A browser that draws nothing through WebGL. To be called before the page is opened. */
export const withoutWebGl = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind.startsWith("webgl") ? null : Reflect.apply(real, this, [kind, ...rest])
    } as typeof real
  })
