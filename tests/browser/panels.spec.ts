import AxeBuilder from "@axe-core/playwright"
import { expect, test } from "@playwright/test"
import { field, openFlat, openRow, readout, row, rowPaths, showSheet, undo, undoTheOneStep } from "./panelsPage"

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

test.describe("targets and fixes", () => {
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
})

test.describe("the pose strip", () => {
  test("draws the bow with held keys in one undo step", async ({ page }) => {
    await openFlat(page)
    const draw = page.getByRole("slider", { name: "Draw", exact: true })
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

test.describe("every sheet", () => {
  for (const [name, width] of [
    ["desk", 1440],
    ["phone", 390],
  ] as const) {
    test(`has no serious accessibility finding and no sideways scrolling at ${name} size`, async ({ page }) => {
      await page.setViewportSize({ width, height: 844 })
      await openFlat(page, "field-recurve-swinging-weights")
      for (const sheet of ["Balance", "Rig", "Bow", "Sliders"]) {
        await showSheet(page, sheet)
        await expect(page.getByRole("tabpanel", { name: sheet })).not.toContainText("Loading…")
        if (sheet === "Rig") await page.locator(".part-name").nth(1).click()
        const { violations } = await new AxeBuilder({ page }).include(".sheet").include(".bench-pose").analyze()
        const serious = violations.filter(({ impact }) => impact === "serious" || impact === "critical")
        expect(serious.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([])
        const sideways = await page
          .locator(".sheet-page:not([hidden])")
          .evaluate((one) => one.scrollWidth - one.clientWidth)
        expect(sideways).toBeLessThanOrEqual(0)
      }
    })
  }

  test("the settings have no serious accessibility finding", async ({ page }) => {
    await openFlat(page)
    await page.getByRole("button", { name: "Settings" }).click()
    await expect(page.getByRole("dialog", { name: "Settings" })).toBeVisible()
    const { violations } = await new AxeBuilder({ page }).include(".settings").analyze()
    expect(violations.filter(({ impact }) => impact === "serious" || impact === "critical")).toEqual([])
  })
})
