import { readFileSync } from "node:fs"
import { expect, test } from "@playwright/test"
import { nameField, openFlat, sceneIn } from "./page"

test("while what the first view does without cannot be fetched, a press says so; once it can, all of it works", async ({
  page,
}) => {
  let network = false
  await page.route(/assets\/uponUse-[^/]*\.js/, (route) => (network ? route.continue() : route.abort()))
  await openFlat(page)
  const save = page.getByRole("button", { name: "Save", exact: true })
  const alert = page.getByRole("alert")
  for (const press of ["Save", "New", "Save as…", "Examples"]) {
    await page.getByRole("button", { name: press, exact: true }).click()
    await expect(alert, press).toContainText("could not be fetched")
    await alert.getByRole("button", { name: "Close" }).click()
  }
  await expect(page.locator("[data-readout]").first()).toBeVisible()
  await expect(page.getByRole("button", { name: "Hold to compare" })).toHaveCount(0)

  network = true
  const saving = page.waitForEvent("download")
  await save.click()
  await saving
  await expect(page.getByRole("button", { name: "Hold to compare" })).toBeVisible()
  await nameField(page).fill("Seventh")
  await nameField(page).press("Enter")
  await page.getByRole("tab", { name: "Balance" }).focus()
  const again = page.waitForEvent("download")
  await page.keyboard.press("Control+s")
  expect((await again).suggestedFilename()).toMatch(/\.json$/)
})

test("keys work however the script came that knows them: with the first view, or before it for a scene in the address", async ({
  page,
}) => {
  for (const address of ["./", "./?scene=beginner-one-rod"]) {
    await openFlat(page, address)
    const name = await nameField(page).inputValue()
    await nameField(page).fill("Eleventh")
    await nameField(page).press("Enter")
    await page.getByRole("tab", { name: "Balance" }).focus()
    // Pressed again until the script that hears it has come; there is one step to undo, and no more.
    await expect(async () => {
      await page.keyboard.press("Control+z")
      await expect(nameField(page), address).toHaveValue(name, { timeout: 1_000 })
    }).toPass()
  }
})

test("a page that fails offers the work first, and goes on with a new bow if one is wanted", async ({ page }) => {
  await page.route(/assets\/BowSheet-[^/]*\.js/, (route) => route.abort())
  await openFlat(page)
  await nameField(page).fill("Bow two, Tuesday")
  await nameField(page).press("Enter")
  await expect(page.getByRole("button", { name: "Hold to compare" })).toBeVisible()
  await page.getByRole("tab", { name: "Bow", exact: true }).click()
  await expect(page.getByRole("heading", { name: "The bench has stopped" })).toBeVisible()
  await expect(page.getByRole("alert")).toContainText("“Bow two, Tuesday” is still here")
  const saving = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save the setup to a file" }).click()
  const saved = await saving
  expect(saved.suggestedFilename()).toBe("bow-two-tuesday.json")
  expect(sceneIn(readFileSync(await saved.path(), "utf8")).name).toBe("Bow two, Tuesday")
  page.once("dialog", (dialog) => dialog.accept())
  await page.getByRole("button", { name: "Start with a new bow" }).click()
  await expect(nameField(page)).toHaveValue("New bow")
})
