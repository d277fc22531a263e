import { expect, type Page, test } from "@playwright/test"
import { openFlat } from "./panelsPage"

const box = async (page: Page, selector: string) => {
  const found = await page.locator(selector).first().boundingBox()
  if (found === null) throw new Error(`${selector} is not on the page`)
  return found
}
const sideways = (page: Page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

test.describe("held on its side", () => {
  test.use({ viewport: { width: 844, height: 390 }, hasTouch: true, isMobile: true })

  test("on a phone on its side the picture keeps most of the height beside everything else, which scrolls", async ({
    page,
  }) => {
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
    const scrolled = async () => {
      await page.evaluate(() => scrollTo(0, 300))
      return (await box(page, ".bench-picture")).y
    }
    // The page grows as its later scripts come, and only then is as long as this.
    await expect.poll(scrolled).toBeLessThan(10)
    expect(await scrolled()).toBeGreaterThanOrEqual(-1)
    await page.getByRole("tab", { name: "Rig", exact: true }).tap()
    await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
    expect(await sideways(page)).toBe(0)
  })
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
    // The new insets and the new size reach the page one after the other.
    const within = async () => {
      const { x, width } = await box(page, selector)
      return Math.min(x, 844 - x - width)
    }
    await expect.poll(within, { message: `${selector}: px to the nearer side` }).toBeGreaterThanOrEqual(47)
  }
})

test.describe("held upright", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  // leva's own sliders aside: each has its number field on another sheet.
  test("on a phone every button, slider and tab is large enough for a thumb", async ({ page }) => {
    await openFlat(page)
    const small = () =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("button, select, [role=tab], input[type=range]")]
          .filter((control) => control.checkVisibility({ visibilityProperty: true }))
          // The whole row of a part is its button.
          .map((control) => ({
            control,
            ...(control.closest(".part-row") ?? control).getBoundingClientRect().toJSON(),
          }))
          .filter(({ width, height }) => width > 0 && Math.min(width, height) < 43.5 && height < 43.5)
          .map(({ control, width, height }) => `${control.ariaLabel ?? control.textContent} ${width}×${height}`),
      )
    for (const name of (await page.getByRole("tab").allTextContents()).filter((tab) => tab !== "Sliders")) {
      await page.getByRole("tab", { name, exact: true }).tap()
      await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
      expect(await small(), name).toEqual([])
    }
  })
})
