import { expect, type Page, test } from "@playwright/test"
import { evaluate } from "../../src/scene/evaluate"
import { landingOf, nudgeTrace } from "../../src/scene/nudge"
import { barriers, press, sceneIn, shippedText } from "./page"
import { openFlat, showSheet } from "./panelsPage"

const scene = "target-recurve-straight-bar"
const landing = (page: Page, distance: number, which: "now" | "held") =>
  page.locator(`[data-figure="landing.${distance}.${which}"]`)
const radio = (page: Page, name: string) => page.getByRole("radio", { name, exact: true })
const time = (page: Page) => page.getByRole("slider", { name: /^Time after/ })
const picture = (page: Page, which: string, view: string) =>
  page.locator(`.nudge-bow[data-bow="${which}"] [data-view="${view}"]`)
const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true })

async function besideAShorterRod(page: Page): Promise<void> {
  await openFlat(page, scene)
  await button(page, "Hold to compare").click()
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 3)
  await showSheet(page, "Nudge")
  await expect(page.locator(".nudge-bow")).toHaveCount(2)
}

test("both bows are nudged alike, and their arrows go where the numbers of the scene say", async ({ page }) => {
  await besideAShorterRod(page)
  const bow = evaluate(sceneIn(shippedText(scene)))
  if (!bow.ok) throw new Error("not a bow")
  const trace = nudgeTrace(bow.value, {
    kind: "knock",
    motion: "yaw",
    impulse: 0.01,
    push: 0,
    lastingS: 0,
    hold: "free",
  })
  if (!trace.ok) throw new Error("not followed")
  for (const distance of [18, 30, 50, 70]) {
    const { right } = landingOf(trace.value, 0.016, distance)
    expect(Number(await landing(page, distance, "held").getAttribute("data-value"))).toBeCloseTo(right, 9)
    await expect(landing(page, distance, "held")).toContainText(`${Math.round(-right * 1e3)}\u00a0mm left`)
  }
  // The shorter rod steadies less.
  const [now, held] = await Promise.all(
    (["now", "held"] as const).map(async (which) => Number(await landing(page, 70, which).getAttribute("data-value"))),
  )
  expect(Math.abs(now!)).toBeGreaterThan(Math.abs(held!))
  await expect(page.getByText(/^An estimate, as from a rigid bow/)).toBeVisible()
  expect(await barriers(page)).toEqual([])
})

test("time is stepped, moved with the arrow keys, and played slowly, and the pictures turn with it", async ({
  page,
}) => {
  await besideAShorterRod(page)
  const angle = picture(page, "now", "yaw").locator(".nudge-angle")
  const turned = picture(page, "now", "yaw").locator("svg g").nth(1)
  await expect(angle).toHaveText("0.000°")
  await button(page, "Step on").click()
  await expect(time(page)).toHaveAttribute("aria-valuetext", "10\u00a0ms")
  await expect(angle).toHaveText(/^0\.0\d\d° left$/)
  await time(page).press("ArrowRight")
  await expect(time(page)).toHaveAttribute("aria-valuetext", "11\u00a0ms")
  await button(page, "Step back").click()
  await button(page, "Step back").click()
  await expect(angle).toHaveText("0.000°")
  await radio(page, "Real time").check()
  await button(page, "Play").click()
  await expect(button(page, "Play")).toBeVisible({ timeout: 10_000 })
  await expect(time(page)).toHaveAttribute("aria-valuetext", "1000\u00a0ms")
  await expect(turned).toHaveAttribute("transform", /^rotate\(-\d+/)
  await radio(page, "100× slower").check()
  await button(page, "Play").click()
  await button(page, "Pause").click()
  expect(await time(page).inputValue().then(Number)).toBeLessThan(0.2)
})

test("with less motion asked for nothing plays by itself, and steps are left", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" })
  await openFlat(page, scene)
  await showSheet(page, "Nudge")
  await expect(button(page, "Step on")).toBeVisible()
  await expect(button(page, "Play")).toHaveCount(0)
  await button(page, "Step on").click()
  await expect(time(page)).toHaveAttribute("aria-valuetext", "10\u00a0ms")
})

test("a hold has a name or numbers of one's own, and a string's is not offered for a compound", async ({ page }) => {
  await openFlat(page, scene)
  await showSheet(page, "Nudge")
  await radio(page, "String held").check()
  const told = page.locator('[data-figure="hold"]')
  await expect(told).toHaveText(/^Stiffness 231\u00a0N·m\/rad against pitch and yaw, none against roll; damping 1\.00/)
  await page.getByText("Stiffness and damping").click()
  const yaw = page.getByRole("textbox", { name: "against yaw" })
  await yaw.fill("40")
  await yaw.press("Enter")
  await expect(radio(page, "Own")).toBeChecked()
  await expect(told).toHaveText(/against pitch, 40\u00a0N·m\/rad against yaw/)
  await yaw.fill("4000")
  await yaw.press("Enter")
  await expect(page.getByText(/4000.* given; a number from 0 to 400/)).toBeVisible()

  await openFlat(page, "compound-front-and-back-bar")
  await showSheet(page, "Nudge")
  await expect(page.getByText(/“String held” is not offered: .* is a compound/)).toBeVisible()
  await expect(radio(page, "String held")).toHaveCount(0)
})

test("what was asked outlives the sheet, and dragging the bow moves the arrows", async ({ page }) => {
  await openFlat(page, scene)
  await showSheet(page, "Nudge")
  await radio(page, "Pitch").check()
  await radio(page, "30 m").check()
  const before = await landing(page, 30, "now").textContent()
  await showSheet(page, "Rig")
  await showSheet(page, "Nudge")
  await expect(radio(page, "Pitch")).toBeChecked()
  await expect(landing(page, 30, "now")).toHaveText(before ?? "")
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 5)
  await expect(landing(page, 30, "now")).not.toHaveText(before ?? "")
})

test("after the shot the fronts drop, the heavier in front the faster", async ({ page }) => {
  await openFlat(page, scene)
  await button(page, "Hold to compare").click()
  await press(page, "front/weights:count", "ArrowUp", 4)
  await showSheet(page, "Nudge")
  await radio(page, "Nose drop").check()
  const drop = async (which: string) =>
    Number(await page.locator(`[data-figure="drop.0.2.${which}"]`).getAttribute("data-value"))
  expect(await drop("now")).toBeLessThan(await drop("held"))
  await expect(page.locator(".nudge-face")).toHaveCount(0)
  await time(page).fill("0.2")
  await expect(picture(page, "held", "pitch").locator(".nudge-angle")).toHaveText(/^\d+\.\d° down$/)
  // The main picture plays it too, and lets go of it at its end.
  const handles = page.locator(".stage-handles")
  await expect(handles).toHaveAttribute("inert")
  expect(await barriers(page, ".nudge-sheet")).toEqual([])
  await time(page).press("End")
  await expect(handles).not.toHaveAttribute("inert")
})

test("the traces are saved as a table", async ({ page }) => {
  await openFlat(page, scene)
  await showSheet(page, "Nudge")
  const saved = page.waitForEvent("download")
  await button(page, "Save CSV").click()
  expect((await saved).suggestedFilename()).toBe("nudge.csv")
})

test("on a phone the sheet fits, every control is large enough for a thumb, and nothing stands in anyone's way", async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await besideAShorterRod(page)
  await page.getByText("Stiffness and damping").click()
  const sheet = page.locator(".nudge-sheet")
  expect(await sheet.evaluate((one) => one.scrollWidth - one.clientWidth)).toBeLessThanOrEqual(0)
  const low = await sheet
    .locator("button, input:not([type=radio]), .choice-option, summary")
    .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).map((one) => one.outerHTML))
  expect(low).toEqual([])
  expect(await barriers(page, ".sheet")).toEqual([])
})
