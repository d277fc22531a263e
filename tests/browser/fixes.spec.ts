import { expect, test } from "@playwright/test"
import { openFlat, readout, row, rowPaths, showSheet, undoTheOneStep } from "./panelsPage"

test.describe("fixes", () => {
  test("a missed target says by how much, and one press of a fix meets it in one undo step", async ({ page }) => {
    await openFlat(page)
    const figure = page.getByRole("region", { name: "Key figures" })
    await expect(figure).toContainText("too far forward")
    const before = await readout(page, "centreMm.forward")
    const fixes = page.getByRole("region", { name: "Off target" })
    await expect(fixes.getByRole("listitem")).toHaveCount(3)
    await fixes.getByRole("button", { name: /^Try/ }).first().click()
    await expect(figure).toContainText("inside the target")
    await expect(fixes).toHaveCount(0)
    await undoTheOneStep(page)
    expect(await readout(page, "centreMm.forward")).toBe(before)
    await expect(fixes.getByRole("listitem")).toHaveCount(3)
  })

  test("a fix that takes the extender out is one undo step too", async ({ page }) => {
    await openFlat(page)
    await page.getByRole("button", { name: "Try: Take the front extender out" }).click()
    await expect(page.getByRole("region", { name: "Key figures" })).toContainText("inside the target")
    await showSheet(page, "Rig")
    await expect(row(page, "front/vbar")).toBeVisible()
    expect(await rowPaths(page)).not.toContain("front/extender")
    await undoTheOneStep(page)
    await expect(row(page, "front/extender")).toBeVisible()
  })

  for (const size of [
    { width: 1024, height: 768 },
    { width: 390, height: 844 },
  ])
    test(`come, go and fold at ${size.width} px without moving a number`, async ({ page }) => {
      await page.setViewportSize(size)
      await openFlat(page)
      const fixes = page.getByRole("region", { name: "Off target" })
      await expect(fixes).toHaveCount(1)
      const number = page.locator('[data-readout="fullDraw.liftNm"]')
      await number.scrollIntoViewIfNeeded()
      const top = () => number.evaluate((element) => element.getBoundingClientRect().top)
      const [before, wide] = [await top(), size.width > 700]
      // There is less room on a phone: the list waits folded until it is asked for.
      const ways = fixes.getByRole("listitem")
      await expect(ways.first()).toBeVisible({ visible: wide })
      await fixes.getByText("Off target", { exact: true }).click()
      await expect(ways.first()).toBeVisible({ visible: !wide })
      expect(await top()).toBe(before)
      if (wide) await fixes.getByText("Off target", { exact: true }).click()
      await fixes.getByRole("button", { name: "Try: 2 discs off the front rod" }).click()
      await expect(fixes).toHaveCount(0)
      expect(await top()).toBe(before)
      // The button stands in the header, which a phone would have to scroll to.
      await page.keyboard.press("Control+z")
      await expect(fixes).toHaveCount(1)
      expect(await top()).toBe(before)
    })
})
