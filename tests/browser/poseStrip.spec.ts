import { expect, test } from "@playwright/test"
import { openFlat, readout, undoTheOneStep } from "./panelsPage"

test.describe("the pose strip", () => {
  test("draws the bow with held keys in one undo step", async ({ page }) => {
    await openFlat(page)
    const draw = page.getByRole("region", { name: "How the bow is held" }).getByRole("slider", { name: "Draw" })
    await draw.focus()
    for (let press = 0; press < 7; press++) await page.keyboard.down("ArrowRight")
    await page.keyboard.up("ArrowRight")
    await expect(draw).toHaveAttribute("aria-valuetext", /7.%.drawn/)
    await expect.poll(() => readout(page, "holdForceN")).toBeGreaterThan(5)
    await undoTheOneStep(page)
    await expect.poll(() => readout(page, "holdForceN")).toBe(0)
    await expect(draw).toHaveValue("0")
  })

  test("drags the slope in one undo step and levels it again with its button", async ({ page }) => {
    await openFlat(page)
    const slope = page.getByRole("slider", { name: "Slope", exact: true })
    const box = (await slope.boundingBox())!
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(box.x + box.width * 0.6, box.y + box.height / 2, { steps: 5 })
    await page.mouse.move(box.x + box.width * 0.7, box.y + box.height / 2, { steps: 5 })
    await page.mouse.up()
    await expect(slope).toHaveAttribute("aria-valuetext", /° up/)
    expect(Number(await slope.inputValue())).toBeGreaterThan(10)
    await undoTheOneStep(page)
    await expect(slope).toHaveValue("0")
    await slope.press("ArrowRight")
    await page.getByRole("button", { name: "Slope: level" }).click()
    await expect(slope).toHaveAttribute("aria-valuetext", "level")
  })

  test("gives a drag up with Escape", async ({ page }) => {
    await openFlat(page)
    const cant = page.getByRole("slider", { name: "Cant", exact: true })
    const box = (await cant.boundingBox())!
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
    await page.mouse.down()
    await page.mouse.move(box.x + box.width * 0.8, box.y + box.height / 2, { steps: 5 })
    await expect(cant).toHaveAttribute("aria-valuetext", /right/)
    await page.keyboard.press("Escape")
    await page.mouse.move(box.x + box.width * 0.9, box.y + box.height / 2)
    await page.mouse.up()
    await expect(cant).toHaveAttribute("aria-valuetext", "upright")
    await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true")
  })
})
