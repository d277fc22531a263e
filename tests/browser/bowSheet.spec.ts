import { expect, test } from "@playwright/test"
import { field, openFlat, readout, showSheet, undoTheOneStep } from "./panelsPage"

test.describe("the bow sheet", () => {
  test("makes a compound of a recurve in one undo step, keeping what both have", async ({ page }) => {
    await openFlat(page)
    const mass = await readout(page, "massG")
    await showSheet(page, "Bow")
    await page.getByRole("radio", { name: "compound" }).check()
    await expect(field(page, "bow:letOffPercent")).toHaveValue("75")
    await expect(field(page, "bow:drawWeightLbf")).toHaveValue("40")
    expect(await readout(page, "massG")).toBeCloseTo(mass, 6)
    await undoTheOneStep(page)
    await expect(page.getByRole("radio", { name: "recurve" })).toBeChecked()
  })

  test("refuses what the limbs cannot do and says so", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Bow")
    const draw = field(page, "bow:drawLengthMm")
    await draw.fill("219")
    await draw.press("Enter")
    await expect(page.getByRole("alert")).toContainText("Bow, draw length: 219 given; more than the brace height")
    await draw.press("Escape")
    const brace = field(page, "bow:braceHeightMm")
    await brace.fill("450")
    await brace.press("Enter")
    await expect(brace).toHaveAttribute("aria-invalid", "true")
    await expect(page.getByRole("alert")).toContainText("Bow, brace height: The brace height cannot be reached")
  })

  test("keeps notes and the setup's name", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Bow")
    await page.getByText("Name and notes").click()
    await page.getByLabel("Notes").fill("Tried on a windy day.")
    await page.getByLabel("Notes").blur()
    await undoTheOneStep(page)
    await page.getByLabel("Name of the setup").fill("Windy day")
    await page.getByLabel("Name of the setup").press("Enter")
    await expect(page.getByLabel("Name of this setup")).toHaveValue("Windy day")
  })

  test("a target is set, ranged and dropped; a range the wrong way round is explained", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Bow")
    await page.getByLabel("Net lift at full draw").check()
    await expect(field(page, "target:netLiftNm.from")).toHaveValue("-0.5")
    await expect(page.getByRole("region", { name: "Key figures" })).toContainText("target −0.5 to 0.5")
    const from = field(page, "target:netLiftNm.from")
    await from.fill("0.7")
    await from.press("Enter")
    await expect(from).toHaveAttribute("aria-invalid", "true")
    await expect(page.getByRole("alert")).toContainText(
      "Target, net lift at full draw: 0.7 to 0.5 given; the smaller number comes first",
    )
    await from.press("Escape")
    await page.getByLabel("Net lift at full draw").uncheck()
    await expect(from).toHaveCount(0)
  })
})
