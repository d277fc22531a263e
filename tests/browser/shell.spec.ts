import { readFileSync } from "node:fs"
import { expect, test } from "@playwright/test"
import { newScene } from "../../src/scene/templates"
import { serializeScene } from "../../src/scene/serialize"
import {
  dropFile,
  expectSameNumbers,
  handle,
  nameField,
  numberShown,
  numbersShown,
  open,
  openFile,
  openFlat,
  press,
  reported,
  sceneIn,
  shippedIds,
  shippedText,
  untilReady,
  handleValue,
} from "./page"

test.describe.configure({ mode: "parallel" })

const ROD = "front/rod:lengthMm"
const FIRST = "target-recurve-straight-bar"
/** An invented file that no shipped one looks like. */
const theirs = () => ({ ...newScene(), name: "From a file", pose: { draw: 0, slopeDeg: 17, cantDeg: -7 } })

for (const id of shippedIds) {
  test(`?scene=${id} shows every number of the report once, with the report's value`, async ({ page }) => {
    await open(page, `./?scene=${id}`)
    expectSameNumbers(await numbersShown(page), reported(sceneIn(shippedText(id))))
    await expect(nameField(page)).toHaveValue(sceneIn(shippedText(id)).name)
  })
}

test("when the page says it is ready, the numbers, the picture and its handles are there", async ({ page }) => {
  await open(page)
  const { numbers, handles, drawn } = await page.evaluate(() => ({
    numbers: document.querySelectorAll("[data-readout]").length,
    handles: document.querySelectorAll("[data-handle]").length,
    drawn: document.querySelectorAll(".stage canvas").length,
  }))
  expect(numbers).toBeGreaterThan(20)
  expect(handles).toBeGreaterThan(5)
  expect(drawn).toBe(1)
  expectSameNumbers(await numbersShown(page), reported(sceneIn(shippedText(FIRST))))
})

test("a scene in the address that does not exist is explained, and the bench is there all the same", async ({
  page,
}) => {
  await openFlat(page, "./?scene=no-such-bow")
  await expect(page.getByRole("alert")).toContainText('"no-such-bow" does not come with the bench')
  await expect(nameField(page)).toHaveValue(sceneIn(shippedText(FIRST)).name)
})

test("a file picked or dropped comes on the bench, and undo brings back what was there", async ({ page }) => {
  await openFlat(page)
  const before = await numbersShown(page)
  await openFile(page, "theirs.json", serializeScene(theirs()))
  await expect(nameField(page)).toHaveValue("From a file")
  await expect(page.getByText("saved in theirs.json")).toBeVisible()
  expectSameNumbers(await numbersShown(page), reported(theirs()))
  await page.getByRole("button", { name: "Undo" }).click()
  await expect(nameField(page)).not.toHaveValue("From a file")
  expectSameNumbers(await numbersShown(page), before)

  await dropFile(page, "dropped.json", serializeScene({ ...theirs(), name: "Dropped" }), () =>
    expect(page.getByText("Drop the scene file to open it")).toBeVisible(),
  )
  await expect(nameField(page)).toHaveValue("Dropped")
  await expect(page.getByText("Drop the scene file to open it")).toBeHidden()
  expectSameNumbers(await numbersShown(page), reported(theirs()))
})

test("a bad file is explained with the place and what is allowed, and the rig stays", async ({ page }) => {
  await openFlat(page)
  await press(page, ROD, "ArrowRight")
  const before = await numbersShown(page)
  const wrongRange = { ...newScene(), pose: { draw: 0, slopeDeg: 97, cantDeg: 0 } }
  const misspelt = JSON.stringify({ ...newScene(), colour: "red" })
  for (const [name, text, place, words] of [
    ["cut.json", serializeScene(newScene()).slice(0, 300), "line", /not JSON: line \d+, column \d+/],
    ["misspelt.json", misspelt, "colour", /is not a key of this format/],
    ["range.json", JSON.stringify(wrongRange), "pose.slopeDeg", /97 given; a number in -90 … 90/],
    [
      "unstrung.json",
      JSON.stringify({ ...newScene(), bow: { ...newScene().bow, braceHeightMm: 490 } }),
      "bow.braceHeightMm",
      /cannot be reached/,
    ],
  ] as const) {
    if (name === "misspelt.json") await dropFile(page, name, text)
    else await openFile(page, name, text)
    const alert = page.getByRole("alert")
    await expect(alert).toContainText(`“${name}” was not opened`)
    await expect(alert).toContainText(place)
    await expect(alert).toContainText(words)
    expectSameNumbers(await numbersShown(page), before)
  }
  await page.getByRole("alert").getByRole("button", { name: "Close" }).click()
  await expect(page.getByRole("alert")).toHaveCount(0)
  await page.getByRole("button", { name: "Undo" }).click()
  await expect(page.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true")
})

test("undo and redo go by their buttons and by their keys, and say what they did", async ({ page }) => {
  await openFlat(page)
  const rod = handle(page, ROD)
  const [undo, redo] = [page.getByRole("button", { name: "Undo" }), page.getByRole("button", { name: "Redo" })]
  const first = await handleValue(rod)
  const balance = await numberShown(page, "centreMm.forward")
  await expect(undo).toHaveAttribute("aria-disabled", "true")
  await press(page, ROD, "Shift+ArrowRight")
  await expect.poll(() => handleValue(rod)).toBeGreaterThan(first)
  const later = await handleValue(rod)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeGreaterThan(balance)

  await undo.click()
  await expect.poll(() => handleValue(rod)).toBe(first)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBe(balance)
  await expect(page.getByRole("status").filter({ hasText: "Undone: " })).toHaveCount(1)
  await redo.click()
  await expect.poll(() => handleValue(rod)).toBe(later)
  await page.keyboard.press("Control+z")
  await expect.poll(() => handleValue(rod)).toBe(first)
  await page.keyboard.press("Control+Shift+z")
  await expect.poll(() => handleValue(rod)).toBe(later)
  await page.keyboard.press("Control+z")
  await page.keyboard.press("Control+y")
  await expect.poll(() => handleValue(rod)).toBe(later)
  await expect(redo).toHaveAttribute("aria-disabled", "true")

  // While a name is typed, undo is the text's own.
  await nameField(page).focus()
  await page.keyboard.press("Control+z")
  await expect.poll(() => handleValue(rod)).toBe(later)
})

test("unsaved work is there after a reload, and another scene in the address does not take it away", async ({
  page,
}) => {
  await openFlat(page)
  const later = (await handleValue(handle(page, ROD))) + 3 * 50
  await press(page, ROD, "Shift+ArrowRight", 3)
  // At once: leaving the page writes what was not yet written.
  await page.reload()
  await untilReady(page)
  expect(await handleValue(handle(page, ROD))).toBe(later)
  await expect(page.getByText(/^Your unsaved work from .* is back\.$/)).toBeVisible()
  await expect(page.getByText("not saved to a file yet")).toBeVisible()

  await open(page, "./?scene=beginner-one-rod")
  await expect(nameField(page)).toHaveValue(sceneIn(shippedText("beginner-one-rod")).name)
  await page.getByRole("button", { name: "Bring it back" }).click()
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(later)
  await expect(nameField(page)).toHaveValue(sceneIn(shippedText(FIRST)).name)
})

test("what is saved opens as the same scene, and Save as gives it a name", async ({ page }) => {
  await openFlat(page)
  await press(page, ROD, "ArrowRight", 2)
  await nameField(page).fill("Club bow, Tuesday")
  await nameField(page).press("Enter")
  const shown = await numbersShown(page)

  const saving = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save", exact: true }).click()
  const saved = await saving
  expect(saved.suggestedFilename()).toBe("club-bow-tuesday.json")
  const text = readFileSync(await saved.path(), "utf8")
  expect(serializeScene(sceneIn(text))).toBe(text)
  expect(sceneIn(text).name).toBe("Club bow, Tuesday")
  expectSameNumbers(shown, reported(sceneIn(text)))
  await expect(page.getByText("saved in club-bow-tuesday.json")).toBeVisible()

  const saveAs = page.getByRole("button", { name: "Save as…" })
  await saveAs.click()
  const dialog = page.getByRole("dialog", { name: "Save as" })
  await page.keyboard.press("Escape")
  await expect(dialog).toBeHidden()
  await expect(saveAs).toBeFocused()
  await saveAs.click()
  await dialog.getByLabel("File name").fill("range: day/2")
  const again = page.waitForEvent("download")
  await page.keyboard.press("Enter")
  expect((await again).suggestedFilename()).toBe("range- day-2.json")
  expect(readFileSync(await (await again).path(), "utf8")).toBe(text)
  await expect(page.getByText("saved in range- day-2.json")).toBeVisible()

  await page.getByRole("button", { name: "New", exact: true }).click()
  await openFile(page, "club-bow-tuesday.json", text)
  await expect(nameField(page)).toHaveValue("Club bow, Tuesday")
  expectSameNumbers(await numbersShown(page), shown)
})

test("New and the examples are one undo away from what was there", async ({ page }) => {
  await openFlat(page)
  await press(page, ROD, "ArrowRight", 2)
  let before = await numbersShown(page)
  // The last press is shown a frame later.
  await expect(async () => {
    const earlier = before
    before = await numbersShown(page)
    expectSameNumbers(before, earlier)
  }).toPass({ intervals: [200] })
  await page.getByRole("button", { name: "New", exact: true }).click()
  await expect(nameField(page)).toHaveValue("New bow")
  await page.getByRole("button", { name: "Examples" }).click()
  const { name } = sceneIn(shippedText("beginner-one-rod"))
  await page.getByRole("button", { name, exact: true }).click()
  await expect(nameField(page)).toHaveValue(name)
  expectSameNumbers(await numbersShown(page), reported(sceneIn(shippedText("beginner-one-rod"))))
  for (let step = 0; step < 2; step++) await page.getByRole("button", { name: "Undo" }).click()
  await expect(nameField(page)).toHaveValue(sceneIn(shippedText(FIRST)).name)
  expectSameNumbers(await numbersShown(page), before)
})

test("without WebGL a plain notice stands, the flat drawing takes the picture's place, and all else works", async ({
  page,
}) => {
  await openFlat(page)
  await expect(page.getByText(/cannot draw in 3D/)).toBeVisible()
  await expect(page.locator(".stage canvas")).toHaveCount(0)
  await expect(page.locator(".stage").getByRole("img").first()).toBeVisible()
  expectSameNumbers(await numbersShown(page), reported(sceneIn(shippedText(FIRST))))

  const rod = handle(page, ROD)
  const first = await handleValue(rod)
  await press(page, ROD, "Shift+ArrowRight")
  await expect.poll(() => handleValue(rod)).toBeGreaterThan(first)
  const balance = await numberShown(page, "centreMm.forward")
  const pressed = await handleValue(rod)
  const box = (await rod.boundingBox())!
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
  await page.mouse.down()
  await page.mouse.move(box.x + box.width / 2 - 60, box.y + box.height / 2, { steps: 5 })
  await page.mouse.up()
  await expect.poll(() => handleValue(rod)).toBeLessThan(pressed)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeLessThan(balance)
  await page.getByRole("button", { name: "Undo" }).click()
  await expect.poll(() => handleValue(rod)).toBe(pressed)
  await openFile(page, "theirs.json", serializeScene(theirs()))
  await expect(nameField(page)).toHaveValue("From a file")
})

test("a browser whose storage throws still has a whole bench, and says that it keeps nothing", async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get() {
        throw new DOMException("denied", "SecurityError")
      },
    })
  })
  await openFlat(page)
  await press(page, ROD, "ArrowRight")
  await expect(page.getByRole("alert")).toContainText("does not keep unsaved work")
  await page.getByRole("alert").getByRole("button", { name: "Close" }).click()
  await press(page, ROD, "ArrowRight")
  const saving = page.waitForEvent("download")
  await page.keyboard.press("Control+s")
  expect(sceneIn(readFileSync(await (await saving).path(), "utf8")).name).toBe(sceneIn(shippedText(FIRST)).name)
})

test("the sheets are tabs: one key to reach them, arrows to change, the balance numbers live behind each", async ({
  page,
}) => {
  await openFlat(page)
  await page.getByRole("tab", { name: "Balance" }).focus()
  for (const name of ["Rig", "Bow", "Sliders", "Draw"]) {
    await page.keyboard.press("ArrowRight")
    await expect(page.getByRole("tab", { name })).toBeFocused()
    await expect(page.getByRole("tab", { name })).toHaveAttribute("aria-selected", "true")
    await expect(page.getByRole("tabpanel", { name })).toBeVisible()
    await expect(page.getByRole("tabpanel", { name }).getByText("Loading…")).toHaveCount(0)
  }
  await expect(page.getByRole("tabpanel")).toHaveCount(1)
  const before = await numberShown(page, "noseDownNm")
  await press(page, ROD, "Shift+ArrowRight")
  await expect.poll(() => numberShown(page, "noseDownNm")).toBeGreaterThan(before)
  expect(Object.keys(await numbersShown(page)).length).toBeGreaterThan(20)
})
