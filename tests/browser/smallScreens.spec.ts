import { expect, type Page, test } from "@playwright/test"
import { openFlat } from "./panelsPage"

const box = async (page: Page, selector: string) => {
  const found = await page.locator(selector).first().boundingBox()
  if (found === null) throw new Error(`${selector} is not on the page`)
  return found
}
const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

test("on a phone on its side the picture keeps most of the height beside everything else, which scrolls", async ({
  browser,
}) => {
  const context = await browser.newContext({ viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true })
  const page = await context.newPage()
  await openFlat(page)
  expect(await sideways(page)).toBe(0)
  const [name, actions, picture, figures] = [
    await box(page, ".bar-name"),
    await box(page, ".bar-actions"),
    await box(page, ".bench-picture"),
    await box(page, ".bench-figures"),
  ]
  expect(actions.x).toBeGreaterThanOrEqual(name.x + name.width)
  expect(picture.height).toBeGreaterThan(0.75 * 390)
  expect(figures.height).toBeLessThan(picture.height / 3)
  await page.evaluate(() => scrollTo(0, 300))
  const scrolled = await box(page, ".bench-picture")
  expect(scrolled.y).toBeGreaterThanOrEqual(-1)
  expect(scrolled.y).toBeLessThan(10)
  await page.getByRole("tab", { name: "Rig", exact: true }).tap()
  await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
  expect(await sideways(page)).toBe(0)
  await context.close()
})

test("nothing lies under a notch or the bar at the foot of a phone", async ({ page }) => {
  const insets = { top: 47, bottom: 34, left: 0, right: 0 }
  const session = await page.context().newCDPSession(page)
  await session.send("Emulation.setSafeAreaInsetsOverride" as never, { insets } as never)
  await page.setViewportSize({ width: 390, height: 844 })
  await openFlat(page)
  expect((await box(page, ".bar-name input")).y).toBeGreaterThanOrEqual(insets.top)
  const foot = () =>
    page.evaluate(() => {
      scrollTo(0, document.documentElement.scrollHeight)
      const sheet = document.querySelector(".sheet")!
      const last = [...sheet.querySelectorAll("button, input, p, summary")]
        .filter((each) => each.checkVisibility())
        .at(-1)!
      return innerHeight - last.getBoundingClientRect().bottom
    })
  // What comes with later scripts makes the page longer; a scroll ends on a whole pixel, the page's height need not.
  await expect.poll(foot).toBeGreaterThan(insets.bottom - 1)

  await session.send(
    "Emulation.setSafeAreaInsetsOverride" as never,
    { insets: { top: 0, bottom: 21, left: 47, right: 47 } } as never,
  )
  await page.setViewportSize({ width: 844, height: 390 })
  for (const selector of [".bar-name", ".bench-picture", ".sheet", ".bench-pose"]) {
    const { x, width } = await box(page, selector)
    expect(x, selector).toBeGreaterThanOrEqual(47)
    expect(x + width, selector).toBeLessThanOrEqual(844 - 47)
  }
})

// leva's own sliders aside: each has its number field on another sheet.
test("on a phone every button, slider and tab is large enough for a thumb", async ({ browser }) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })
  const page = await context.newPage()
  await openFlat(page)
  const small = () =>
    page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>("button, select, [role=tab], input[type=range]")]
        .filter((control) => control.checkVisibility({ visibilityProperty: true }))
        // The whole row of a part is its button.
        .map((control) => ({ control, ...(control.closest(".part-row") ?? control).getBoundingClientRect().toJSON() }))
        .filter(({ width, height }) => width > 0 && Math.min(width, height) < 43.5 && height < 43.5)
        .map(({ control, width, height }) => `${control.ariaLabel ?? control.textContent} ${width}×${height}`),
    )
  for (const name of (await page.getByRole("tab").allTextContents()).filter((tab) => tab !== "Sliders")) {
    await page.getByRole("tab", { name, exact: true }).tap()
    await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
    expect(await small(), name).toEqual([])
  }
  await context.close()
})
