import { expect, test } from "@playwright/test"
import { handle, handleValue, openFlat, press } from "./page"

const ROD = "front/rod:lengthMm"

test("where the file's rules do not come the page says so and numbers still change; once they can, they do", async ({
  page,
}) => {
  let asked = 0
  let came = 0
  let network = false
  await page.route(/assets\/(parse|schema)-[^/]*\.js/, (route) => {
    asked++
    return network ? route.continue() : route.abort()
  })
  page.on("response", (response) => {
    if (/assets\/parse-/.test(response.url()) && response.ok()) came++
  })
  await openFlat(page)
  await expect.poll(() => asked).toBeGreaterThan(0)

  const rod = handle(page, ROD)
  const first = await handleValue(rod)
  // Numbers are checked by themselves; parts that come and go need the whole file's rules.
  const extender = page.locator("[data-extender]").first()
  await expect(async () => {
    await extender.click()
    await expect(page.getByRole("alert")).toContainText("checks a whole setup could not be fetched", { timeout: 500 })
  }).toPass({ timeout: 20_000 })
  await press(page, ROD, "ArrowRight")
  await expect.poll(() => handleValue(rod)).toBeGreaterThan(first)

  network = true
  await expect(async () => {
    await extender.click()
    await expect.poll(() => came, { timeout: 500 }).toBeGreaterThan(0)
  }).toPass({ timeout: 20_000 })
})
