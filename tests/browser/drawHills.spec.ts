import { readFile } from "node:fs/promises"
import { expect, type Page, test } from "@playwright/test"
import { openFlat } from "./panelsPage"

async function show(page: Page, tab: "Draw" | "Hills"): Promise<void> {
  await page.getByRole("tab", { name: tab }).click()
  await page.getByRole("tabpanel", { name: tab }).getByRole("button", { name: "Save CSV" }).first().waitFor()
}

async function open(page: Page, scene: string, tab: "Draw" | "Hills"): Promise<void> {
  await openFlat(page, scene)
  await show(page, tab)
}

const figure = async (page: Page, name: string): Promise<number> =>
  Number(await page.locator(`[data-figure="${name}"]`).getAttribute("data-value"))

const drawFraction = (page: Page) => page.locator('input[data-slot="pose:draw"]').inputValue()

const stepsBack = (page: Page) => page.getByRole("button", { name: /^Undo/ })

test("the draw curve is read with arrow keys and saved as a table", async ({ page }) => {
  await open(page, "target-recurve-straight-bar", "Draw")
  const plot = page.getByRole("slider", { name: /Force against draw/ })
  await plot.focus()
  await page.keyboard.press("Home")
  await expect(plot).toHaveAttribute("aria-valuetext", /: 0\.0\sN, 0\.0\sJ stored$/)
  await page.keyboard.press("End")
  const stored = await figure(page, "storedJ")
  await expect(plot).toHaveAttribute("aria-valuetext", new RegExp(`${stored.toFixed(1)}\\sJ stored$`))
  expect(await figure(page, "fullness")).toBeGreaterThan(0.5)

  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save CSV" }).click()
  const file = await download
  expect(file.suggestedFilename()).toBe("draw-curve.csv")
  const lines = (await readFile(await file.path(), "utf8")).trimEnd().split("\r\n")
  expect(Number(lines.at(-1)?.split(",")[2])).toBe(stored)
})

test("the ring about a focused plot leaves the reading under it whole", async ({ page }) => {
  await open(page, "target-recurve-straight-bar", "Draw")
  const plot = page.getByRole("slider", { name: /Force against draw/ })
  await plot.focus()
  await page.keyboard.press("End")
  const [ring, under] = await plot.evaluate((frame) => {
    const { outlineStyle, outlineWidth, outlineOffset } = getComputedStyle(frame)
    const reach =
      outlineStyle === "none" ? Number.NaN : Number.parseFloat(outlineWidth) + Number.parseFloat(outlineOffset)
    const reading = document.createRange()
    reading.selectNodeContents(frame.parentElement!.querySelector("output")!)
    return [frame.getBoundingClientRect().bottom + reach, reading.getBoundingClientRect().top]
  })
  expect(ring).toBeLessThanOrEqual(under!)
})

test("a compound's draw curve says that it is a sketch", async ({ page }) => {
  await open(page, "compound-front-and-back-bar", "Draw")
  await expect(page.getByText(/^A sketch: cams are not modelled/)).toBeVisible()
  await expect(page.locator('[data-figure="fullness"]')).toHaveCount(0)
})

test("playing the draw moves the bow, lets it down and leaves nothing to undo", async ({ page }) => {
  await open(page, "target-recurve-straight-bar", "Draw")
  await page.getByRole("button", { name: "Play" }).click()
  await expect.poll(() => drawFraction(page)).toBe("1")
  await expect(page.getByRole("button", { name: "Play" })).toBeVisible({ timeout: 20_000 })
  expect(await drawFraction(page)).toBe("0")
  await expect(stepsBack(page)).toHaveAttribute("aria-disabled", "true")
})

test("pausing keeps the draw as one undo step", async ({ page }) => {
  await open(page, "target-recurve-straight-bar", "Draw")
  await page.getByRole("button", { name: "Play" }).click()
  await expect.poll(async () => Number(await drawFraction(page))).toBeGreaterThan(0.1)
  await page.getByRole("button", { name: "Pause" }).click()
  expect(Number(await drawFraction(page))).toBeGreaterThan(0.1)
  await stepsBack(page).click()
  await expect.poll(() => drawFraction(page)).toBe("0")
})

test("raising the elbow lowers the lift of the line of pull", async ({ page }) => {
  await open(page, "target-recurve-straight-bar", "Draw")
  const lift = () => page.locator('[data-readout="fullDraw.liftNm"]').getAttribute("data-value")
  const before = Number(await lift())
  const elbow = page.getByRole("textbox", { name: /Draw elbow above the arrow line/ })
  await elbow.fill("7")
  await elbow.press("Enter")
  await expect.poll(async () => Number(await lift())).toBeLessThan(before - 5)
})

test("a raised front is said to send the weight toward the archer, and its motion can be run and reset", async ({
  page,
}) => {
  await open(page, "field-recurve-swinging-weights", "Hills")
  await expect(
    page.getByText(/toward the archer in the bow's own frame, though plumb in the world\.$/).first(),
  ).toBeVisible()
  await page.getByRole("button", { name: "Start" }).click()
  const trace = page.getByRole("slider", { name: /Angle from plumb against time/ })
  await expect(page.getByRole("button", { name: "Go there instead" })).toBeVisible()
  await expect(page.getByRole("button", { name: "Start" })).toBeVisible({ timeout: 20_000 })
  await expect(trace).toHaveAttribute("aria-valuetext", /bow 30° up/)
  await page.getByRole("button", { name: "Reset" }).click()
  await expect(trace).toHaveCount(0)
})

test("with less motion asked for the whole run stands at once", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" })
  await open(page, "field-recurve-swinging-weights", "Hills")
  await page.getByRole("button", { name: "Start" }).click()
  const moments = page.getByRole("slider", { name: /Nose-down moment/ })
  await expect(moments).toHaveAttribute("aria-valuetext", /^0\.00\s.*bow 15° up/)
  await moments.focus()
  await page.keyboard.press("End")
  await expect(moments).toHaveAttribute("aria-valuetext", /bow 30° up/)
})

test("the flattest hang is searched, tried with one press and taken back with one undo", async ({ page }) => {
  await open(page, "field-recurve-swinging-weights", "Hills")
  const before = await figure(page, "flatness.free")
  await page.getByRole("button", { name: "Search" }).click()
  await expect(page.getByText(/^All \d+ tries made\./)).toBeVisible({ timeout: 30_000 })
  await page
    .getByRole("button", { name: /^Try: / })
    .first()
    .click()
  await expect.poll(() => figure(page, "flatness.free")).toBeLessThan(before)
  await expect(page.getByText(/search again to try one/)).toBeVisible()
  await stepsBack(page).click()
  await expect.poll(() => figure(page, "flatness.free")).toBe(before)
})

test("a search is cancelled with the best of what was tried, and an impossible range is named", async ({ page }) => {
  await open(page, "field-recurve-swinging-weights", "Hills")
  const stem = page.getByRole("group", { name: "Stem" })
  const steps = stem.getByRole("textbox", { name: "in steps of" })
  await steps.fill("0.1")
  await steps.press("Enter")
  await page.getByRole("button", { name: "Search" }).click()
  await page.getByRole("button", { name: "Cancel" }).click()
  await expect(page.getByText(/^Stopped after \d+ of \d+ tries\./)).toBeVisible()

  const to = stem.getByRole("textbox", { name: "to", exact: true })
  await to.fill("20")
  await to.press("Enter")
  await page.getByRole("button", { name: "Search" }).click()
  await expect(page.getByRole("alert")).toContainText("Stem, to: 20 given; no less than 50 is needed.")
})

test("on a phone neither sheet makes the page scroll sideways", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await openFlat(page, "field-recurve-swinging-weights")
  for (const tab of ["Draw", "Hills"] as const) {
    await show(page, tab)
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390)
  }
})
