import { expect, test } from "@playwright/test"
import { handle, handleValue, open, press } from "./page"

/** What a driver that draws in software says of its own speed. */
const DRIVER = /GL Driver Message/

// Blocked as elsewhere, the worker's registration would complain.
test.use({ serviceWorkers: "allow" })

test("the console has no warning and no error, on opening nor with a drag, another view and every sheet", async ({
  page,
}) => {
  const said: string[] = []
  page.on("console", (message) => {
    if (["warning", "error"].includes(message.type()) && !DRIVER.test(message.text())) said.push(message.text())
  })
  page.on("pageerror", (error) => said.push(error.message))
  await open(page)
  const rod = handle(page, "front/rod:lengthMm")
  const length = await handleValue(rod)
  await press(page, "front/rod:lengthMm", "ArrowRight", 2)
  await expect.poll(() => handleValue(rod)).toBe(length + 10)
  await page.getByRole("button", { name: "Top", exact: true }).click()
  for (const tab of await page.getByRole("tab").all()) {
    await tab.click()
    await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
  }
  expect(said).toEqual([])
})
