import { expect, test } from "@playwright/test"
import { field, openFlat, openRow, readout, row, rowPaths, showSheet, undoTheOneStep } from "./panelsPage"

test.describe("the parts table", () => {
  test.beforeEach(async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Rig")
    await expect(row(page, "bow/riser")).toBeVisible()
  })

  test("adds a part, and one undo takes it away", async ({ page }) => {
    const [paths, mass] = [await rowPaths(page), await readout(page, "massG")]
    await page.getByRole("button", { name: "Add to Left arm" }).click()
    await page.getByRole("group", { name: "What to add to Left arm" }).getByRole("button", { name: "damper" }).click()
    await expect(row(page, "front/vbar/left/damper").getByRole("button")).toBeFocused()
    await expect(field(page, "front/vbar/left/damper:massG")).toHaveValue("25")
    expect((await readout(page, "massG")) - mass).toBeCloseTo(25, 6)
    await undoTheOneStep(page)
    await expect.poll(() => rowPaths(page)).toEqual(paths)
  })

  test("uses a mount that nothing was on", async ({ page }) => {
    await page.getByRole("button", { name: "Add to Lower mount" }).click()
    await page
      .getByRole("group", { name: "What to add to Lower mount" })
      .getByRole("button", { name: "swing weight" })
      .click()
    await expect(row(page, "lower/swing")).toBeVisible()
    await expect(page.locator('[data-readout="pitchInertiaFree"]')).toHaveCount(1)
    await page.getByRole("radio", { name: "ball joint" }).check()
    await expect(page.getByRole("radio", { name: "ball joint" })).toBeChecked()
    await page.getByRole("button", { name: "Remove", exact: true }).click()
    await expect(page.locator('[data-readout="pitchInertiaFree"]')).toHaveCount(0)
  })

  test("moves, duplicates and removes a part, each one undo step", async ({ page }) => {
    const before = await rowPaths(page)
    const forward = await readout(page, "centreMm.forward")
    await openRow(page, "front/extender")
    await page.getByRole("button", { name: "Move down" }).click()
    await expect.poll(() => rowPaths(page)).toEqual(["front/vbar", "front/extender", ...before.slice(2)])
    expect(await readout(page, "centreMm.forward")).not.toBe(forward)
    await expect(page.getByRole("button", { name: "Move down" })).toBeFocused()
    await undoTheOneStep(page)
    await openRow(page, "front/weights")
    await page.getByRole("button", { name: "Duplicate" }).click()
    await expect(row(page, "front/weights#2")).toBeVisible()
    await undoTheOneStep(page)
    await openRow(page, "front/weights")
    await page.getByRole("button", { name: "Remove", exact: true }).click()
    await expect(row(page, "front/weights")).toHaveCount(0)
    await expect(row(page, "front/damper").getByRole("button")).toBeFocused()
    await undoTheOneStep(page)
    await expect.poll(() => rowPaths(page)).toEqual(before)
    expect(await readout(page, "centreMm.forward")).toBe(forward)
  })

  test("renames a part, and an empty name gives the kind's name back", async ({ page }) => {
    await openRow(page, "front/rod")
    const name = page.getByLabel("Name", { exact: true })
    await name.fill("The club's long rod")
    await name.press("Enter")
    await expect(row(page, "front/rod")).toContainText("The club's long rod")
    await undoTheOneStep(page)
    await expect(row(page, "front/rod")).toContainText("Rod")
    await name.fill("Other rod")
    await name.blur()
    await expect(row(page, "front/rod")).toContainText("Other rod")
    await name.fill("")
    await name.blur()
    await expect(row(page, "front/rod").getByRole("button")).toHaveText("Rod")
  })

  test("adds, renames and sizes an accessory", async ({ page }) => {
    await page.getByRole("button", { name: "Add to Accessories" }).click()
    const name = page.getByLabel("Name", { exact: true })
    await expect(name).toBeFocused()
    await name.fill("quiver hook")
    await name.press("Enter")
    await expect(row(page, "accessories/quiver hook")).toBeVisible()
    const roll = await readout(page, "inertiaGrip.roll")
    await page.getByLabel("A box with a size, not a point").check()
    await expect(field(page, "accessories/quiver hook:sizeMm.up")).toHaveValue("60")
    expect(await readout(page, "inertiaGrip.roll")).toBeGreaterThan(roll)
    await name.fill("")
    await name.press("Enter")
    await expect(page.getByRole("alert")).toContainText("needs a name")
    await expect(row(page, "accessories/quiver hook")).toBeVisible()
  })

  test("takes an arm off a V-bar and puts one on like the other", async ({ page }) => {
    const [mass, side] = [await readout(page, "massG"), await readout(page, "centreMm.side")]
    await openRow(page, "front/vbar")
    await page.getByRole("button", { name: "Remove the left arm" }).click()
    await expect(row(page, "front/vbar/left/rod")).toHaveCount(0)
    expect(await readout(page, "massG")).toBeLessThan(mass)
    await page.getByRole("button", { name: "Add a left arm" }).click()
    await expect(row(page, "front/vbar/left/rod")).toBeVisible()
    expect(await readout(page, "massG")).toBeCloseTo(mass, 6)
    expect(await readout(page, "centreMm.side")).toBeCloseTo(side, 6)
  })

  test("changes both arms together only while they are paired", async ({ page }) => {
    await openRow(page, "front/vbar")
    const [left, right] = [field(page, "front/vbar/left:splayDeg"), field(page, "front/vbar/right:splayDeg")]
    await left.fill("53")
    await left.press("Enter")
    await expect(right).toHaveValue("53")
    await page.getByLabel("Change both arms of a V-bar together").uncheck()
    await left.fill("47")
    await left.press("Enter")
    await expect(left).toHaveValue("47")
    await expect(right).toHaveValue("53")
  })

  test("adds up as shown", async ({ page }) => {
    const numbers = async (cells: string) =>
      (await page.locator(cells).allTextContents()).map((text) => Number.parseFloat(text.replace("\u2212", "-")))
    const sum = (all: readonly number[]) => all.reduce((total, one) => total + one, 0)
    for (const cell of ["part-mass", "part-moment", "part-share"]) {
      const parts = await numbers(`tbody tr.part-row .${cell}`)
      const [total] = await numbers(`.part-total .${cell}`)
      expect(parts.length).toBeGreaterThan(10)
      expect(sum(parts)).toBeCloseTo(total ?? Number.NaN, 6)
    }
  })

  test("is worked with the keyboard alone", async ({ page }) => {
    await page.getByRole("tab", { name: "Rig" }).focus()
    await page.keyboard.press("Tab")
    await expect(page.getByRole("button", { name: "Add to Front mount" })).toBeFocused()
    await page.keyboard.press("Tab")
    await page.keyboard.press("Enter")
    await expect(field(page, "front/extender:massG")).toBeVisible()
    await page.keyboard.press("Tab")
    await page.keyboard.press("Tab")
    await expect(field(page, "front/extender:massG")).toBeFocused()
    await page.keyboard.type("83")
    await page.keyboard.press("Tab")
    await expect(row(page, "front/extender")).toContainText("83 g")
    await undoTheOneStep(page)
  })
})
