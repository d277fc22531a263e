import { expect, type Page, test } from "@playwright/test"
import { numberShown, open } from "./page"
import { openFlat } from "./panelsPage"

const SWINGING = "field-recurve-swinging-weights"
const field = `./?scene=${SWINGING}`
const slider = (page: Page, of: string) => page.locator(`[data-slot="pose:${of}"]`)
const label = (page: Page, text: RegExp) => page.locator(".view3d-label", { hasText: text })
const flat = (page: Page) => page.getByRole("button", { name: "Flat drawing" }).click()
const undo = (page: Page) => page.getByRole("button", { name: /^Undo/ })

async function switchOff(page: Page, what: string): Promise<void> {
  await page.getByRole("button", { name: "Settings" }).click()
  await page.getByRole("checkbox", { name: what }).uncheck()
  await page.getByRole("button", { name: "Close" }).click()
}

test("off the level a hillside with its target is drawn, solid and flat, and on the level it is gone", async ({
  page,
}) => {
  await open(page, field)
  await slider(page, "slopeDeg").fill("20")
  await expect(label(page, /^target up the hill, 20°$/)).toBeVisible()
  await slider(page, "slopeDeg").fill("-12")
  await expect(label(page, /^target down the hill, 12°$/)).toBeVisible()
  await slider(page, "slopeDeg").fill("0")
  await expect(label(page, /the hill/)).toHaveCount(0)
  await expect(label(page, /^to the target$/)).toHaveCount(1)

  await flat(page)
  await expect(page.locator(".flat-hill")).toHaveCount(0)
  await slider(page, "slopeDeg").fill("20")
  await expect(page.locator(".flat-hill")).toBeVisible()
  await switchOff(page, "Ground, and the hillside on a slope")
  await expect(page.locator(".flat-hill")).toHaveCount(0)
})

test("a drawn bow shows its balance with the numbers of the page, and can be told not to", async ({ page }) => {
  await open(page, "./?scene=beginner-one-rod")
  await expect(label(page, /^net /)).toHaveCount(0)
  await slider(page, "draw").fill("1")
  const net = `net +${(await numberShown(page, "fullDraw.netLiftNm")).toFixed(2)}\u00a0N·m, front rises`
  await expect(label(page, /^net /)).toContainText(net)
  await expect(label(page, /^net /)).toBeVisible()
  await expect(label(page, /^lift /)).toHaveText(
    `lift ${(await numberShown(page, "fullDraw.liftNm")).toFixed(2)}\u00a0N·m`,
  )

  await flat(page)
  await expect(page.locator(".flat-drawn text").first()).toContainText(net)
  await switchOff(page, "Balance of the drawn bow")
  await expect(page.locator(".flat-drawn")).toHaveCount(0)
  await page.getByRole("button", { name: "Side" }).click()
  await expect(label(page, /^(net|lift) /)).toHaveCount(0)
})

test("a motion is played in the picture alone: the bow's numbers, its slope and the history stay", async ({ page }) => {
  await open(page, field)
  await page.getByRole("tab", { name: "Hills" }).click()
  const before = await numberShown(page, "noseDownNm")
  await page.getByRole("button", { name: "Start" }).click()
  const moving = label(page, /^in motion, bow /)
  await expect(moving).toHaveText(/30\.0° up$/)
  await expect(moving).toBeVisible()
  await expect(page.locator(".stage-handles")).toHaveAttribute("inert")
  expect(await numberShown(page, "noseDownNm")).toBe(before)
  expect(await slider(page, "slopeDeg").inputValue()).toBe("15")
  await expect(undo(page)).toHaveAttribute("aria-disabled", "true")

  await expect(moving).toHaveCount(0, { timeout: 20_000 })
  await expect(page.locator(".stage-handles")).not.toHaveAttribute("inert")
  await expect(undo(page)).toHaveAttribute("aria-disabled", "true")
})

test("changing the bow, resetting or leaving the page of hills ends the motion in the picture", async ({ page }) => {
  await openFlat(page, SWINGING)
  await page.getByRole("tab", { name: "Hills" }).click()
  const start = page.getByRole("button", { name: "Start" })
  const ghost = page.locator(".flat-locked")
  const ends: (() => Promise<unknown>)[] = [
    () => page.getByRole("button", { name: "Reset" }).click(),
    () => slider(page, "draw").fill("0.5"),
    () => page.getByRole("tab", { name: "Balance" }).click(),
  ]
  for (const end of ends) {
    await start.click()
    await expect(ghost).toBeVisible()
    await end()
    await expect(ghost).toHaveCount(0)
  }
})

test("with less motion asked for the picture goes by steps", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" })
  await open(page, field)
  await page.getByRole("tab", { name: "Hills" }).click()
  await page.getByRole("button", { name: "Start" }).click()
  const moving = label(page, /^in motion, bow /)
  await expect(moving).toHaveText(/15\.0° up$/)
  await page.waitForTimeout(400)
  await expect(moving).toHaveText(/15\.0° up$/)
  await page.getByRole("button", { name: "Step on" }).click()
  await expect(moving).not.toHaveText(/15\.0° up$/)
  for (let press = 0; press < 3; press++) await page.getByRole("button", { name: "Step on" }).click()
  await expect(moving).toHaveText(/30\.0° up$/)
  for (let press = 0; press < 4; press++) await page.getByRole("button", { name: "Step back" }).click()
  await expect(moving).toHaveText(/15\.0° up$/)
  await page.getByRole("button", { name: "Reset" }).click()
  await expect(moving).toHaveCount(0)
})

test("all swing weights move together, and their table has each and the sum", async ({ page }) => {
  await openFlat(page, SWINGING)
  await page.getByRole("tab", { name: "Hills" }).click()
  await page.getByRole("button", { name: "Start" }).click()
  await expect(page.getByText(/^1: .*swing weight\. 2: .*swing weight\./)).toBeVisible()
  await expect(page.getByRole("slider", { name: /Nose-down moment against time/ })).toHaveAttribute(
    "aria-valuetext",
    /nose-down together .* free, .* locked\.$/,
  )
})

test("while the draw curve catches up with changed limbs its numbers are dashes, never those of the limbs before", async ({
  page,
}) => {
  await openFlat(page)
  const stored = page.locator('[data-figure="storedJ"]')
  const draw = page.getByRole("tab", { name: "Draw" })
  await draw.click()
  const before = await stored.textContent()
  await page.getByRole("tab", { name: "Bow" }).click()
  const brace = page.locator('input[data-slot="bow:braceHeightMm"]')
  await brace.fill("207")
  await brace.press("Enter")
  await draw.click()
  await expect(stored).not.toHaveText(before ?? "")
  const changed = await stored.textContent()
  const texts = await stored.evaluateHandle((element) => {
    const seen: string[] = []
    new MutationObserver(() => seen.push(element.textContent ?? "")).observe(element, {
      characterData: true,
      childList: true,
      subtree: true,
    })
    return seen
  })
  await undo(page).click()
  await expect(stored).toHaveText(before ?? "")
  expect(await texts.jsonValue()).toEqual(["–", before])
  expect(changed).not.toBe(before)
})
