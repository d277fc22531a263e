import { expect, test } from "@playwright/test"
import { field, openFlat, openRow, readout, showSheet, undoTheOneStep } from "./panelsPage"

test.describe("the slider panel", () => {
  test("moves the bench by a drag in one undo step, and follows it back", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Sliders")
    const panel = page.getByRole("region", { name: "Sliders" })
    const length = panel.getByLabel("Rod, length, mm").first()
    await expect(length).toHaveValue("730.0")
    const before = await readout(page, "centreMm.forward")
    const box = (await length.boundingBox())!
    // The track lies to the left of the box that shows its number.
    await page.mouse.move(box.x - 40, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(box.x - 50, box.y + box.height / 2, { steps: 4 })
    await page.mouse.move(box.x - 60, box.y + box.height / 2, { steps: 4 })
    await page.mouse.up()
    await expect.poll(() => readout(page, "centreMm.forward")).not.toBe(before)
    await undoTheOneStep(page)
    await expect(length).toHaveValue("730.0")
    await expect.poll(() => readout(page, "centreMm.forward")).toBe(before)
  })

  test("changes nothing when a box is only visited", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Rig")
    await openRow(page, "front/rod")
    const shipped = await readout(page, "centreMm.forward")
    await field(page, "front/rod:lengthMm").fill("703.27")
    await field(page, "front/rod:lengthMm").press("Enter")
    await expect.poll(() => readout(page, "centreMm.forward")).not.toBe(shipped)
    const before = await readout(page, "centreMm.forward")
    await showSheet(page, "Sliders")
    const length = page.getByRole("region", { name: "Sliders" }).getByLabel("Rod, length, mm").first()
    await expect(length).toHaveValue("703.3")
    await length.focus()
    await length.blur()
    expect(await readout(page, "centreMm.forward")).toBe(before)
    await undoTheOneStep(page)
  })
})
