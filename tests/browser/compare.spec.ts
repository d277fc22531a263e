import { expect, type Page, test } from "@playwright/test"
import { barriers, numberShown, open, press, shippedText } from "./page"
import { openFlat } from "./panelsPage"

const held = (page: Page, key: string) => page.locator(`[data-beside="${key}"]`).first()
const heldNumber = async (page: Page, key: string) => Number(await held(page, key).getAttribute("data-value"))
const button = (page: Page, name: string) => page.getByRole("button", { name })

async function shorten(page: Page) {
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 3)
  // Numbers follow with the next frame.
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))
}

test("a setup held to compare stands beside every number, in the picture and in the slope plot", async ({ page }) => {
  await openFlat(page)
  const before = await numberShown(page, "centreMm.forward")
  await button(page, "Hold to compare").click()
  await expect(held(page, "centreMm.forward")).toHaveText(/^held [\d.]+, the same$/)
  await expect(page.locator(".flat-beside path:not(.flat-beside-mark)")).toHaveCount(0)
  await shorten(page)
  await expect(held(page, "centreMm.forward")).toHaveText(/, change −/)
  expect(await heldNumber(page, "centreMm.forward")).toBe(before)
  expect(await numberShown(page, "centreMm.forward")).toBeLessThan(before)
  // The rod that is longer there, seen from the side and from above.
  await expect(page.locator(".flat-beside path:not(.flat-beside-mark)").first()).toBeAttached()
  expect(await barriers(page)).toEqual([])
  await page.getByRole("tab", { name: "Hills" }).click()
  await expect(page.locator('[data-figure="flatness.held"]')).toBeVisible()
})

test("the two setups swap in one undo step, and the held one outlives a reload", async ({ page }) => {
  await openFlat(page)
  const before = await numberShown(page, "centreMm.forward")
  await button(page, "Hold to compare").click()
  await shorten(page)
  await expect(held(page, "centreMm.forward")).toHaveText(/, change −/)
  const shortened = await numberShown(page, "centreMm.forward")
  await button(page, "Swap the two setups").click()
  await expect(held(page, "centreMm.forward")).toHaveText(/, change \+/)
  expect(await numberShown(page, "centreMm.forward")).toBe(before)
  expect(await heldNumber(page, "centreMm.forward")).toBe(shortened)
  await button(page, "Undo").click()
  await expect(held(page, "centreMm.forward")).toHaveText(/, the same$/)
  await page.waitForTimeout(600)
  await page.reload()
  await expect.poll(() => heldNumber(page, "centreMm.forward")).toBeCloseTo(shortened, 9)
  await button(page, "Stop comparing").click()
  await expect(page.locator("[data-beside]")).toHaveCount(0)
})

test("a file can be held to compare, and one that is no scene is explained", async ({ page }) => {
  await openFlat(page)
  const pick = async (name: string, text: string) => {
    const chooser = page.waitForEvent("filechooser")
    await button(page, "Compare a file…").click()
    await (await chooser).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) })
  }
  await pick("broken.json", '{ "format": "bow-balance-bench" ')
  await expect(page.getByText("“broken.json” was not compared; the bench is as it was.")).toBeVisible()
  await pick("compound.json", shippedText("compound-front-and-back-bar"))
  await expect(page.locator(".compare-name")).toContainText("Compared with")
  await expect(held(page, "massG")).toHaveText(/^held \d+/)
})

test("the solid picture draws the held setup too, without a complaint from the graphics", async ({ page }) => {
  const complaints: string[] = []
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text())
  })
  await open(page)
  await button(page, "Hold to compare").click()
  const shot = async () => (await page.locator(".view3d canvas").screenshot()).toString("base64")
  await shorten(page)
  await expect(held(page, "centreMm.forward")).toHaveText(/, change −/)
  const beside = await shot()
  await button(page, "Stop comparing").click()
  await expect(page.locator("[data-beside]")).toHaveCount(0)
  await expect.poll(shot).not.toBe(beside)
  expect(complaints).toEqual([])
})
