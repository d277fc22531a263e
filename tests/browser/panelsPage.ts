import { expect, type Locator, type Page } from "@playwright/test"
import { openFlat as openAddress } from "./page"

/** Opens a shipped scene with the flat drawing: these tests are about numbers, not pictures. */
export const openFlat = (page: Page, scene = "target-recurve-straight-bar"): Promise<void> =>
  openAddress(page, `./?scene=${scene}`)

/** The live number of a report key, unrounded, in the report's unit. */
export async function readout(page: Page, key: string): Promise<number> {
  return Number(await page.locator(`[data-readout="${key}"]`).getAttribute("data-value"))
}

export const showSheet = (page: Page, name: string): Promise<void> =>
  page.getByRole("tab", { name, exact: true }).click()

/** The text field of a slot. */
export const field = (page: Page, slot: string): Locator => page.locator(`input[data-slot="${slot}"]`)

/** A part's line in the parts table, by its path. */
export const row = (page: Page, path: string): Locator => page.locator(`tr.part-row[data-row="${path}"]`)

export const openRow = (page: Page, path: string): Promise<void> => row(page, path).getByRole("button").click()

const undoButton = (page: Page): Locator => page.getByRole("button", { name: "Undo", exact: true })
export const undo = (page: Page): Promise<void> => undoButton(page).click()

/** That whatever was done is exactly one step: one undo, and there is nothing left to undo. */
export async function undoTheOneStep(page: Page): Promise<void> {
  await expect(undoButton(page)).toHaveAttribute("aria-disabled", "false")
  await undo(page)
  await expect(undoButton(page)).toHaveAttribute("aria-disabled", "true")
}

/** Paths of the parts table's lines, in order. */
export const rowPaths = (page: Page): Promise<(string | null)[]> =>
  page.locator("tr.part-row[data-row]").evaluateAll((rows) => rows.map((line) => line.getAttribute("data-row")))
