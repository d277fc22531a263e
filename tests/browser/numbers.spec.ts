import { expect, test } from "@playwright/test"
import { field, openFlat, openRow, readout, showSheet, undo, undoTheOneStep } from "./panelsPage"

test.describe("live numbers", () => {
  test("each report key stands on the page exactly once, with its unrounded value", async ({ page }) => {
    await openFlat(page, "field-recurve-swinging-weights")
    const shown = await page
      .locator("[data-readout]")
      .evaluateAll((all) => all.map((one) => one.getAttribute("data-readout")))
    expect([...new Set(shown)].sort()).toEqual([...shown].sort())
    for (const key of ["massG", "centreMm.forward", "centreMm.up", "centreMm.side", "armForwardMm", "armSideMm"]) {
      expect(shown).toContain(key)
    }
    for (const key of ["noseDownNm", "cantRightNm", "inertiaGrip.pitch", "inertiaGrip.roll", "inertiaGrip.yaw"]) {
      expect(shown).toContain(key)
    }
    for (const key of ["pitchInertiaFree", "fullDraw.netLiftNm", "fullDraw.balancedForwardMm"])
      expect(shown).toContain(key)
    expect(await readout(page, "massG")).toBeGreaterThan(1000)
    for (const sheet of ["Rig", "Bow", "Sliders"]) {
      await showSheet(page, sheet)
      const there = await page
        .locator("[data-readout]")
        .evaluateAll((all) => all.map((one) => one.getAttribute("data-readout")))
      expect([...there].sort()).toEqual([...shown].sort())
    }
  })

  test("stand in the chosen units, and the choice is kept", async ({ page }) => {
    await openFlat(page)
    const mass = page.locator('[data-readout="massG"]')
    await expect(mass).toContainText("g")
    const grams = await readout(page, "massG")
    await page.getByRole("button", { name: "Settings" }).click()
    await page.getByRole("radio", { name: "ounces" }).check()
    await page.getByRole("radio", { name: "inches" }).check()
    await expect(mass).toContainText("oz")
    expect(await readout(page, "massG")).toBe(grams)
    await page.keyboard.press("Escape")
    await expect(page.getByRole("button", { name: "Settings" })).toBeFocused()
    await page.reload()
    await expect(mass).toContainText((grams / 28.349523125).toFixed(2))
  })
})

for (const width of [1440, 1024, 390]) {
  test(`turn resistance says each multiple of the bare bow on one line at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 })
    // Yaw some sixteen times the bare bow's: four digits.
    await openFlat(page, "target-recurve-drooped-bar")
    const multiples = page.locator(".turn-bar-multiple")
    await expect(multiples).toHaveCount(3)
    await expect(multiples.nth(1)).toHaveText(/^1\d\.\d\d× the bare bow$/)
    const lines = await multiples.evaluateAll((all) =>
      all.map((one) => {
        const text = document.createRange()
        text.selectNodeContents(one)
        return [text.getClientRects().length, one.scrollWidth - one.clientWidth]
      }),
    )
    expect(lines).toEqual([1, 2, 3].map(() => [1, 0]))
  })
}

test.describe("a number field", () => {
  test.beforeEach(async ({ page }) => {
    await openFlat(page)
    await showSheet(page, "Rig")
    await openRow(page, "front/rod")
  })

  test("keeps refused text, says the place and the range, and leaves the rig alone", async ({ page }) => {
    const length = field(page, "front/rod:lengthMm")
    const before = await readout(page, "centreMm.forward")
    await length.fill("abc")
    await length.press("Enter")
    await expect(length).toHaveValue("abc")
    await expect(length).toHaveAttribute("aria-invalid", "true")
    await expect(page.getByRole("alert")).toHaveText(
      /Front rod, length: "abc" given; a number from 1 to 2000\smm is needed/,
    )
    await length.fill("2001")
    await length.blur()
    await expect(length).toHaveValue("2001")
    await expect(page.getByRole("alert")).toContainText("2001")
    expect(await readout(page, "centreMm.forward")).toBe(before)
    await length.press("Escape")
    await expect(length).toHaveValue("730")
    await expect(length).not.toHaveAttribute("aria-invalid", "true")
  })

  test("says which rule between numbers was broken, and takes the number once it fits", async ({ page }) => {
    const inner = field(page, "front/rod:innerMm")
    await inner.fill("60")
    await inner.press("Enter")
    await expect(page.getByRole("alert")).toContainText("less than the outer diameter")
    await expect(inner).toHaveValue("60")
    await inner.fill("11,5")
    await inner.press("Enter")
    await expect(inner).toHaveValue("11.5")
    await expect(page.getByRole("alert")).toHaveCount(0)
  })

  test("steps with the arrow keys, and a held key is one undo step", async ({ page }) => {
    const length = field(page, "front/rod:lengthMm")
    await length.focus()
    await page.keyboard.down("ArrowUp")
    await page.keyboard.down("ArrowUp")
    await page.keyboard.down("ArrowUp")
    await page.keyboard.up("ArrowUp")
    await expect(length).toHaveValue("745")
    await undoTheOneStep(page)
    await expect(length).toHaveValue("730")
    await length.press("Shift+ArrowDown")
    await expect(length).toHaveValue("680")
  })

  test("that a part may do without is emptied to take its number away", async ({ page }) => {
    const rated = field(page, "front/rod:maxEndWeightG")
    const had = await rated.inputValue()
    await rated.fill("237")
    await rated.press("Enter")
    await rated.fill("")
    await rated.press("Enter")
    await expect(rated).toHaveValue("")
    await undo(page)
    await expect(rated).toHaveValue("237")
    await undo(page)
    await expect(rated).toHaveValue(had)
  })

  test("that a part needs is not emptied", async ({ page }) => {
    const mass = field(page, "front/rod:massG")
    const before = await readout(page, "massG")
    await mass.fill("")
    await mass.press("Enter")
    await expect(mass).toHaveAttribute("aria-invalid", "true")
    await expect(page.getByRole("alert")).toContainText("Front rod, mass: a number from 0 to 2000")
    expect(await readout(page, "massG")).toBe(before)
  })

  test("shows and reads inches, with the range in inches", async ({ page }) => {
    await page.getByRole("button", { name: "Settings" }).click()
    await page.getByRole("radio", { name: "inches" }).check()
    await page.keyboard.press("Escape")
    const length = field(page, "front/rod:lengthMm")
    await expect(length).toHaveValue("28.7402")
    await length.fill("99")
    await length.press("Enter")
    await expect(page.getByRole("alert")).toContainText("in is needed")
    await length.fill("25")
    await length.press("Enter")
    await page.getByRole("button", { name: "Settings" }).click()
    await page.getByRole("radio", { name: "millimetres" }).check()
    await page.keyboard.press("Escape")
    await expect(length).toHaveValue("635")
  })
})
