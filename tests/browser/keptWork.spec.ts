import { expect, test } from "@playwright/test"
import {
  barriers,
  handle,
  handleValue,
  nameField,
  open,
  openFlat,
  press,
  sceneIn,
  shippedText,
  untilReady,
} from "./page"

const ROD = "front/rod:lengthMm"
const nameOf = (id: string) => sceneIn(shippedText(id)).name
const [FIRST, BEGINNER] = [nameOf("target-recurve-straight-bar"), nameOf("beginner-one-rod")]

test("work that makes room for another scene outlives its edits and a reload, and can be brought back or discarded", async ({
  page,
}) => {
  const kept = page.getByRole("button", { name: "Kept work" })
  const rod = handle(page, ROD)
  await openFlat(page)
  await expect(kept).toHaveCount(0)
  const lengthened = async (times: number) => {
    const length = (await handleValue(rod)) + times * 50
    await press(page, ROD, "Shift+ArrowRight", times)
    await expect.poll(() => handleValue(rod)).toBe(length)
    return length
  }
  const first = await lengthened(3)

  await open(page, "./?scene=beginner-one-rod")
  await expect(page.getByText(/^Unsaved work from .* is kept\.$/)).toBeVisible()
  await page.getByRole("button", { name: "Close" }).click()
  const second = await lengthened(2)
  await page.reload()
  await untilReady(page)
  await expect(page.getByText(/^Your unsaved work from .* is back\. Unsaved work from .* is kept\.$/)).toBeVisible()
  expect(await handleValue(rod)).toBe(second)
  await page.getByRole("button", { name: "Close" }).click()

  await kept.focus()
  await page.keyboard.press("Enter")
  await page.keyboard.press("Tab")
  await expect(page.getByRole("button", { name: `Bring back ${FIRST}` })).toBeFocused()
  await page.keyboard.press("Enter")
  await expect(nameField(page)).toHaveValue(FIRST)
  await expect.poll(() => handleValue(rod)).toBe(first)
  await expect(page.getByText("unsaved", { exact: true })).toBeVisible()

  // What was on the bench is kept in its turn, and undo changes the two back.
  await kept.click()
  await expect(page.getByRole("button", { name: `Discard ${BEGINNER}` })).toBeVisible()
  expect(await barriers(page, ".kept-menu")).toEqual([])
  await page.keyboard.press("Escape")
  await page.getByRole("button", { name: "Undo" }).click()
  await expect(nameField(page)).toHaveValue(BEGINNER)
  await expect.poll(() => handleValue(rod)).toBe(second)

  await kept.click()
  await page.getByRole("button", { name: `Discard ${FIRST}` }).click()
  await expect(kept).toHaveCount(0)
  await expect(page.getByRole("button", { name: "Open…" })).toBeFocused()
  await page.getByRole("button", { name: "Undo" }).click()
  await expect(kept).toHaveCount(1)
  await page.getByRole("button", { name: "Redo" }).click()
  await expect(kept).toHaveCount(0)
  await page.reload()
  await untilReady(page)
  expect(await handleValue(rod)).toBe(second)
  await expect(kept).toHaveCount(0)
})
