import { expect, type Page, test } from "@playwright/test"
import * as english from "../../src/words/all"
import { french } from "../../src/words/fr"
import { nameField, sceneIn, shippedText, untilReady, withoutWebGl } from "./page"
import { field, openFlat } from "./panelsPage"

test.use({ locale: "fr-FR" })

/** The sentences of a catalogue that have no gaps. */
const sentences = (part: unknown): string[] => {
  if (typeof part === "string") return [part.trim()]
  return part !== null && typeof part === "object" ? Object.values(part).flatMap(sentences) : []
}
const alsoFrench = new Set(sentences(french))
const onlyEnglish = new Set(sentences(english).filter((each) => /\p{L}{3}/u.test(each) && !alsoFrench.has(each)))
/** Little words that hardly an English sentence is without, and that are none in French. */
const LITTLE_WORDS = /\b(the|of|and|is|are|it|with|for|this|that|from|to|at|by|has|have|not|was)\b/i

/** Everything in sight on the page and everything read aloud from it, each once. */
const saidBy = (page: Page, within: string) =>
  page.evaluate((selector) => {
    const said = new Set<string>()
    for (const element of document.querySelectorAll(`${selector}, ${selector} *`)) {
      if (!element.checkVisibility()) continue
      for (const name of ["aria-label", "aria-valuetext", "aria-description", "title", "placeholder"]) {
        said.add(element.getAttribute(name) ?? "")
      }
      for (const node of element.childNodes) if (node.nodeType === Node.TEXT_NODE) said.add(node.textContent ?? "")
    }
    return [...said].map((text) => text.trim()).filter((text) => text !== "")
  }, within)

const inEnglish = (said: readonly string[]) => said.filter((text) => onlyEnglish.has(text) || LITTLE_WORDS.test(text))

const sheets = ["Balance", "Rig", "Bow", "Sliders", "Draw", "Hills", "Find", "Measure", "Nudge"]

test("a reader of French is spoken to in French on every sheet, and nothing hangs over the edge of a phone", async ({
  page,
}) => {
  test.slow()
  await openFlat(page)
  await expect(page.locator("html")).toHaveAttribute("lang", "fr")
  // The parts of a new bow are named in the language of the page; those of a file keep their names.
  await page.getByRole("button", { name: french.bar.fresh, exact: true }).click()
  expect(inEnglish(await saidBy(page, "body"))).toEqual([])
  for (const sheet of sheets) {
    await page.locator(`#sheet-tab-${sheet}`).click()
    const panel = page.locator(`#sheet-${sheet}`)
    await expect(panel.locator(".sheet-loading")).toHaveCount(0)
    await panel.locator("details").evaluateAll((all) => {
      for (const each of all as HTMLDetailsElement[]) each.open = true
    })
    if (sheet === "Rig") await panel.locator(".part-name").nth(1).click()
    expect(inEnglish(await saidBy(page, `#sheet-${sheet}`)), sheet).toEqual([])
    for (const width of [390, 768, 1024, 1280]) {
      await page.setViewportSize({ width, height: 844 })
      const over = () =>
        page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)
      await expect.poll(over, `${sheet} at ${width}`).toBe(0)
    }
  }
})

test("numbers are shown and typed with a comma in French, and choosing English has the page load again in it with the setup kept", async ({
  page,
}) => {
  await openFlat(page)
  const number = page.locator('[data-readout="centreMm.forward"]').first()
  await expect(number).toContainText(/\d,\d/)
  await page.locator("#sheet-tab-Rig").click()
  const length = field(page, "front/rod:lengthMm")
  await page.locator('tr.part-row[data-row="front/rod"]').getByRole("button").click()
  await length.fill("712,5")
  await length.press("Enter")
  await expect(length).toHaveValue("712,5")
  const forward = Number(await number.getAttribute("data-value"))

  await page.getByRole("button", { name: french.bar.settings, exact: true }).click()
  await page.getByRole("radio", { name: "English" }).click()
  await expect(page.locator("html")).toHaveAttribute("lang", "en")
  await untilReady(page)
  await expect(page.getByRole("button", { name: english.bar.settings, exact: true })).toBeVisible()
  await expect(number).toHaveAttribute("data-value", String(forward))
  await expect(number).toContainText(/\d\.\d/)
})

test("a setup that came with a link is still there once another language has been chosen", async ({ page }) => {
  const { linkTo } = await import("../../src/takeaway/link/link")
  const scene = sceneIn(shippedText("short-hunting-rod"))
  await withoutWebGl(page)
  await page.goto(linkTo({ ...scene, name: "Sent" }, "./", { everything: true }))
  await untilReady(page)
  await page.getByRole("button", { name: french.bar.settings, exact: true }).click()
  await page.getByRole("radio", { name: "English" }).click()
  await expect(page.locator("html")).toHaveAttribute("lang", "en")
  await untilReady(page)
  await expect(nameField(page)).toHaveValue("Sent")
})

test("a page that cannot fetch its French speaks English rather than not at all", async ({ page }) => {
  await page.route(/\/assets\/fr-[^/]*\.js$/, (route) => route.abort())
  await withoutWebGl(page)
  await page.goto("./")
  await untilReady(page)
  await expect(page.locator("html")).toHaveAttribute("lang", "en")
  await expect(page.getByRole("button", { name: english.bar.settings, exact: true })).toBeVisible()
})
