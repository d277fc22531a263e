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

  test("takes a comma typed into a box as the decimal mark", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Sliders")
    const length = page.getByRole("region", { name: "Sliders" }).getByLabel("Rod, length, mm").first()
    await length.focus()
    await length.selectText()
    await page.keyboard.type("713,5")
    await page.keyboard.press("Enter")
    await expect(length).toHaveValue("713.5")
    await showSheet(page, "Rig")
    await openRow(page, "front/rod")
    await expect(field(page, "front/rod:lengthMm")).toHaveValue("713.5")
  })

  test("gives a drag up with Escape, drops the rest of it, and the next drag counts", async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Sliders")
    const length = page.getByRole("region", { name: "Sliders" }).getByLabel("Rod, length, mm").first()
    const before = await readout(page, "centreMm.forward")
    const box = (await length.boundingBox())!
    const drag = (to: number) => page.mouse.move(box.x - to, box.y + box.height / 2, { steps: 4 })
    await drag(40)
    await page.mouse.down()
    await drag(60)
    await expect.poll(() => readout(page, "centreMm.forward")).not.toBe(before)
    await page.keyboard.press("Escape")
    await expect.poll(() => readout(page, "centreMm.forward")).toBe(before)
    await drag(50)
    await page.mouse.up()
    await expect(length).toHaveValue("730.0")
    expect(await readout(page, "centreMm.forward")).toBe(before)
    await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true")

    await drag(40)
    await page.mouse.down()
    await drag(60)
    await page.mouse.up()
    await expect.poll(() => readout(page, "centreMm.forward")).not.toBe(before)
    await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute(
      "title",
      "Undo: Front rod, length",
    )
    await undoTheOneStep(page)
  })

  test("is worked with the keyboard alone: headings fold, boxes step, take a number and give it up", async ({
    page,
  }) => {
    await openFlat(page)
    await showSheet(page, "Sliders")
    const panel = page.getByRole("region", { name: "Sliders" })
    const length = panel.getByLabel("Rod, length, mm").first()
    const heading = panel.locator("summary", { hasText: "How it is held" })
    await expect(length).toHaveValue("730.0")
    await page.getByRole("tab", { name: "Sliders" }).focus()
    await page.keyboard.press("Tab")
    await expect(heading).toBeFocused()
    await expect(panel.getByLabel("Slope, °")).toBeVisible()
    await page.keyboard.press("Enter")
    await expect(panel.getByLabel("Slope, °")).toBeHidden()
    await page.keyboard.press("Tab")
    await expect(panel.locator("summary", { hasText: "Front mount" })).toBeFocused()
    await page.keyboard.press("Space")
    await expect(length).toBeHidden()
    await page.keyboard.press("Space")
    await expect(length).toBeVisible()

    const before = await readout(page, "centreMm.forward")
    for (let tabs = 0; tabs < 12 && !(await length.evaluate((box) => box === document.activeElement)); tabs++) {
      await page.keyboard.press("Tab")
    }
    await expect(length).toBeFocused()
    await page.keyboard.press("ArrowDown")
    await page.keyboard.press("ArrowDown")
    await expect(length).toHaveValue("728.0")
    await expect.poll(() => readout(page, "centreMm.forward")).not.toBe(before)
    await page.keyboard.press("Escape")
    await expect(length).toHaveValue("730.0")
    await expect(length).toBeFocused()
    await expect.poll(() => readout(page, "centreMm.forward")).toBe(before)

    await page.keyboard.type("999")
    await page.keyboard.press("Escape")
    await expect(length).toHaveValue("730.0")
    const picked = ({ value, selectionStart, selectionEnd }: HTMLInputElement) =>
      value.slice(selectionStart!, selectionEnd!)
    await expect.poll(() => length.evaluate(picked)).toBe("730.0")
    await page.keyboard.type("655")
    await page.keyboard.press("Enter")
    await page.keyboard.press("Tab")
    await expect(length).toHaveValue("655.0")
    await expect.poll(() => readout(page, "centreMm.forward")).not.toBe(before)
    await undoTheOneStep(page)
    await expect(length).toHaveValue("730.0")
    // A slider that comes or goes builds the panels anew: what is folded stays so.
    await expect(panel.getByLabel("Slope, °")).toBeHidden()
  })
})
