import { expect, test } from "@playwright/test"
import { barriers } from "./page"
import { openFlat, showSheet } from "./panelsPage"

test.describe("every sheet", () => {
  for (const [name, width] of [
    ["desk", 1440],
    ["phone", 390],
  ] as const) {
    test(`with a part open has no serious accessibility finding and no sideways scrolling at ${name} size`, async ({
      page,
    }) => {
      await page.setViewportSize({ width, height: 844 })
      await openFlat(page, "field-recurve-swinging-weights")
      for (const sheet of ["Balance", "Rig", "Bow", "Sliders"]) {
        await showSheet(page, sheet)
        await expect(page.getByRole("tabpanel", { name: sheet })).not.toContainText("Loading…")
        if (sheet === "Rig") await page.locator(".part-name").nth(1).click()
        expect(await barriers(page, ".sheet"), sheet).toEqual([])
        const sideways = await page
          .locator(".sheet-page:not([hidden])")
          .evaluate((one) => one.scrollWidth - one.clientWidth)
        expect(sideways).toBeLessThanOrEqual(0)
      }
      expect(await barriers(page, ".bench-pose")).toEqual([])
    })
  }
})
