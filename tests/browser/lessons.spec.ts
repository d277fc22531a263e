import { expect, type Page, test } from "@playwright/test"
import {
  barriers,
  dropFile,
  expectSameNumbers,
  handle,
  nameField,
  numbersShown,
  open,
  openFlat,
  press,
  shippedText,
} from "./page"
import { lessonIds, lessonText } from "../clinic/shippedLessons"
import * as english from "../../src/words/all"
import { french } from "../../src/words/fr"

const room = (page: Page) => page.getByRole("dialog")
const heading = (page: Page) => room(page).locator("h3")
const on = (page: Page) => room(page).locator(".lesson-on")
const number = async (page: Page, key: string) =>
  Number(await room(page).locator(`[data-lesson-number="${key}"]`).getAttribute("data-value"))

/** Opens a lesson in a browser that need not draw in 3D, and waits for its first step. */
async function lesson(page: Page, id: string) {
  await openFlat(page, `./?lesson=${id}`)
  await expect(heading(page)).toBeVisible()
}

/** Presses a presenter's clicker until the step that lets something be touched. */
async function untilTouch(page: Page) {
  const slider = room(page).getByRole("slider").and(page.locator("input"))
  while (!(await slider.isVisible())) {
    const before = await on(page).textContent()
    const count = await room(page).locator(".lesson-count").textContent()
    await page.keyboard.press("PageDown")
    await expect
      .poll(async () => [await on(page).textContent(), await room(page).locator(".lesson-count").textContent()])
      .not.toEqual([before, count])
  }
  return slider
}

test("A lesson is chosen from the list, and leaving it brings back the bench, its history and the focus", async ({
  page,
}) => {
  await openFlat(page)
  await press(page, "front/rod:lengthMm", "ArrowUp", 3)
  const own = await numbersShown(page)
  const opener = page.getByRole("button", { name: "Lessons", exact: true })
  await opener.click()
  // And the way to show the bow on the bench.
  await expect(room(page).getByRole("listitem")).toHaveCount(lessonIds.length + 1)
  expect(await barriers(page)).toEqual([])
  await room(page).getByRole("button", { name: "Longer or heavier?" }).click()
  await expect(heading(page)).toBeFocused()
  const slider = await untilTouch(page)
  await slider.focus()
  await page.keyboard.press("ArrowRight")
  await page.keyboard.press("Control+z")
  await page.keyboard.press("Control+z")
  await page.keyboard.press("Escape")
  await expect(room(page)).toHaveCount(0)
  await expect(opener).toBeFocused()
  expectSameNumbers(await numbersShown(page), own)
  const undo = page.getByRole("button", { name: "Undo" })
  await expect(undo).toHaveAttribute("title", /length/)
  await page.reload()
  await expect(page.getByText("Your unsaved work")).toBeVisible()
  expectSameNumbers(await numbersShown(page), own)
})

test("A prediction is asked before its answer is shown, and the answer is what the numbers say", async ({ page }) => {
  await lesson(page, "4-droop")
  await page.keyboard.press("PageDown")
  await expect(room(page).getByText("Does the balance point move")).toBeVisible()
  const before = await number(page, "centreMm.forward")
  await expect(room(page).getByText("what the numbers say")).toHaveCount(0)
  expect(await barriers(page)).toEqual([])
  await room(page).getByRole("button", { name: "It moves back" }).click()
  await expect(room(page).locator(".lesson-reply")).toBeFocused()
  await expect(room(page).getByRole("listitem").filter({ hasText: "your answer" })).toContainText("It moves back")
  await expect(room(page).getByRole("listitem").filter({ hasText: "what the numbers say" })).toContainText(
    "It moves forward",
  )
  const after = await number(page, "centreMm.forward")
  expect(after).toBeGreaterThan(before)
  const change = Number(after.toFixed(1)) - Number(before.toFixed(1))
  await expect(room(page).locator(".lesson-reply")).toContainText(`+${change.toFixed(1)}`)
  await expect(room(page).locator('[data-lesson-number="centreMm.forward"]')).toContainText(`held ${before.toFixed(1)}`)
  expect(await barriers(page)).toEqual([])
})

test("In French a lesson asks, answers and is tried in French, its numbers written as there", async ({ page }) => {
  await openFlat(page, "./?language=fr&lesson=8-swinging-weight")
  await expect(heading(page)).toHaveText("Bloquées, à l’horizontale")
  await expect(room(page).locator(".lesson-say")).toContainText(/piquer l’avant avec \d,\d\d\u00a0N·m/)
  await page.keyboard.press("PageDown")
  await room(page).getByRole("button", { name: "Il reste comme il est" }).click()
  await expect(room(page).getByRole("listitem").filter({ hasText: "ce que disent les chiffres" })).toContainText(
    "Il augmente",
  )
  // Nothing but the slope has changed: the bow stands beside as it was held, all of it.
  const drawn = await room(page).locator(".flat-part").count()
  const beside = room(page).locator(".flat-beside path:not(.flat-beside-mark)")
  await expect.poll(() => beside.count()).toBeGreaterThanOrEqual(drawn)
  await untilTouch(page)
  await expect(room(page).locator(".lesson-say")).toContainText("Libres d’osciller")
  expect(await barriers(page)).toEqual([])
})

test("The one number may be touched, in the picture and by its slider, and reaching the goal is said", async ({
  page,
}) => {
  await lesson(page, "1-weight-forward")
  await expect(room(page).locator("[data-handle]")).toHaveCount(0)
  const slider = await untilTouch(page)
  const knobs = room(page).locator("[data-handle]")
  await expect(knobs).toHaveCount(1)
  await expect(knobs).toHaveAttribute("data-handle", "front/weights:count")
  expect(await barriers(page)).toEqual([])
  await knobs.focus()
  await page.keyboard.press("ArrowUp")
  await expect(slider).toHaveValue("1")
  await expect(room(page).getByText("Done.")).toHaveCount(0)
  await slider.focus()
  for (let presses = 0; presses < 3; presses++) await page.keyboard.press("ArrowRight")
  await expect(slider).toHaveValue("4")
  await expect(room(page).locator(".lesson-goal")).toContainText(/^Done\. With 4 discs/)
  // The arrows were the slider's; the clicker's keys are the lesson's wherever the focus is.
  await page.keyboard.press("PageUp")
  await expect(heading(page)).toHaveText("What it is for")
})

const catalogue = { en: english, fr: french } as const

/** The two shapes of a projector's picture, and the largest of screens, which has the shape of the second. */
const PROJECTORS = [
  [1024, 768],
  [1280, 720],
] as const
const LARGEST = [3840, 2160] as const

for (const language of ["en", "fr"] as const) {
  test(`On a big screen, a projector's or of 3840 × 2160, every step of every lesson has room for its idea and large numbers, ${language}`, async ({
    page,
  }) => {
    // Some forty steps, each at two sizes or three.
    test.slow()
    const { bar, lessons: words } = catalogue[language]
    await openFlat(page, `./?language=${language}`)
    await page.getByRole("button", { name: bar.lessons, exact: true }).click()
    for (const id of lessonIds) {
      await room(page)
        .getByText(JSON.parse(lessonText(id)).name[language], { exact: true })
        .click()
      await expect(heading(page)).toBeVisible()
      await room(page).getByRole("button", { name: words.big }).click()
      await expect(room(page)).toHaveClass(/lesson-big/)
      for (let step = 0; ; step++) {
        const count = await room(page).locator(".lesson-count").textContent()
        for (const [width, height] of step === 0 ? [LARGEST, ...PROJECTORS] : PROJECTORS) {
          await page.setViewportSize({ width, height })
          const place = `${id}, ${count}, ${width} × ${height}`
          const { over, digits } = await measuredIdea(page)
          expect(over, place).toBeLessThanOrEqual(0)
          // As tall as a line of a poster: a fourteenth of the screen.
          expect(digits, place).toBeGreaterThan(height / 14)
        }
        if ((await on(page).textContent()) === words.all) break
        const before = await room(page).textContent()
        await page.keyboard.press("PageDown")
        await expect(room(page)).not.toHaveText(before ?? "", { useInnerText: false })
      }
      await on(page).click()
      // The whole screen is given back with the lesson, and that would end the next one's.
      await expect.poll(() => page.evaluate(() => document.fullscreenElement === null)).toBe(true)
    }
  })
}

/** By how many pixels an idea goes over its box, and how tall its large numbers are, once a frame has fitted it. */
const measuredIdea = (page: Page) =>
  page.locator(".lesson-idea").evaluate(async (idea) => {
    for (let frame = 0; frame < 2; frame++) await new Promise(requestAnimationFrame)
    return {
      over: Math.max(idea.scrollHeight - idea.clientHeight, idea.scrollWidth - idea.clientWidth),
      digits: Number.parseFloat(getComputedStyle(idea.querySelector(".lesson-number-text")!).fontSize),
    }
  })

test("The big screen has no barriers in the light or the dark, and Escape leaves it before the lesson", async ({
  page,
}) => {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme })
    await lesson(page, "3-splay")
    await room(page).getByRole("button", { name: "Big screen" }).click()
    await page.keyboard.press("ArrowRight")
    await page.keyboard.press("ArrowRight")
    await expect(room(page).locator(".lesson-reply")).toBeVisible()
    expect(await barriers(page)).toEqual([])
  }
  await page.keyboard.press("Escape")
  await expect(room(page)).not.toHaveClass(/lesson-big/)
  await page.keyboard.press("Escape")
  await expect(room(page)).toHaveCount(0)
})

test("A lesson that is dropped is shown; a broken one is explained with its place and leaves the bench as it was", async ({
  page,
}) => {
  await openFlat(page)
  const own = await numbersShown(page)
  const text = lessonText("6-short-rod")
  await dropFile(page, "mine.lesson.json", text.replace("The short rod", "Mine"))
  await expect(room(page).getByRole("heading", { name: "Mine" })).toBeVisible()
  await page.keyboard.press("Escape")

  await dropFile(page, "mine.lesson.json", text.replace('"front/rod:lengthMm": 458', '"front/rod:lengthMm": -458'))
  const notice = page.getByRole("alert")
  await expect(notice).toContainText("“mine.lesson.json” was not opened; the bench is as it was.")
  await expect(notice).toContainText("steps[1].predict.next.set.front/rod:lengthMm: -458 given")
  await expect(room(page)).toHaveCount(0)
  expectSameNumbers(await numbersShown(page), own)
})

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true })

  test("The picture, the slider and the way on are in reach together, and large enough for a thumb", async ({
    page,
  }) => {
    await lesson(page, "3-splay")
    const slider = await untilTouch(page)
    await expect(slider).toBeInViewport({ ratio: 1 })
    await expect(on(page)).toBeInViewport({ ratio: 1 })
    await expect(room(page).locator(".flat-view")).toBeInViewport({ ratio: 1 })
    const small = await room(page)
      .locator("button:visible, input:visible")
      .evaluateAll((controls) =>
        controls.filter((control) => control.getBoundingClientRect().height < 44).map(({ outerHTML }) => outerHTML),
      )
    expect(small).toEqual([])
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390)
    expect(await barriers(page)).toEqual([])
  })
})

test("The bow on the bench is shown on the big screen, one idea at a time, against the held setup", async ({
  page,
}) => {
  await openFlat(page)
  await page.getByRole("button", { name: "Hold to compare" }).click()
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 3)
  const own = await numbersShown(page)
  await page.getByRole("button", { name: "Lessons", exact: true }).click()
  await room(page).getByRole("button", { name: "Show the bow on the bench" }).click()
  await expect(room(page)).toHaveClass(/lesson-big/)
  expect(await number(page, "centreMm.forward")).toBeCloseTo(own["centreMm.forward"]!, 6)
  await expect(room(page).locator('[data-lesson-number="centreMm.forward"]')).toContainText(/held .*, change −/)
  await expect(room(page).locator(".flat-beside")).toBeVisible()
  expect(await barriers(page)).toEqual([])
  await page.keyboard.press("PageDown")
  await expect(heading(page)).toHaveText("What the hand holds")
  expect(await number(page, "massG")).toBeCloseTo(own.massG!, 6)
  await room(page).getByRole("button", { name: "Back to the bench" }).click()
  expectSameNumbers(await numbersShown(page), own)
})

test("A lesson of one's own goes along whole in a link, and a link that was cut is explained", async ({
  page,
  context,
}) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"])
  await openFlat(page)
  await dropFile(page, "mine.lesson.json", lessonText("6-short-rod").replace("The short rod", "Mine"))
  const copy = room(page).getByRole("button", { name: english.lessons.copyLink, exact: true })
  await copy.click()
  await expect(room(page).getByRole("status").filter({ hasText: english.lessons.linkCopied })).toBeVisible()
  const link = await page.evaluate(() => navigator.clipboard.readText())
  await room(page).getByRole("button", { name: english.lessons.leave }).click()

  await page.evaluate((to) => location.assign(to), link)
  await expect(room(page).getByRole("heading", { name: "Mine" })).toBeVisible()
  expect(new URL(page.url()).hash).toBe("")
  expect(await barriers(page)).toEqual([])
  await room(page).getByRole("button", { name: english.lessons.leave }).click()
  await page.evaluate((to) => location.assign(to), link.slice(0, -7))
  await expect(page.getByRole("alert")).toContainText("The lesson in the link was not opened")
  await expect(page.getByRole("alert")).toContainText("damaged")

  // Followed from elsewhere; a browser that does not let the page copy gets the link in a field.
  await page.addInitScript(() => {
    navigator.clipboard.writeText = () => Promise.reject(new Error("not allowed"))
  })
  await page.goto("about:blank")
  await page.goto(link)
  await expect(room(page).getByRole("heading", { name: "Mine" })).toBeVisible()
  await copy.click()
  const field = room(page).getByLabel(english.lessons.linkByHand)
  await expect(field).toBeFocused()
  await expect(field).toHaveValue(link)
})

test("A broken scene that is dropped during a lesson is explained over it", async ({ page }) => {
  await lesson(page, "2-longer-or-heavier")
  await dropFile(page, "broken.json", "{")
  const notice = page.locator(".lesson-notice").getByRole("alert")
  await expect(notice).toContainText("“broken.json” was not opened")
  await notice.getByRole("button", { name: "Close" }).click()
  await expect(notice).toHaveCount(0)
  await expect(heading(page)).toBeVisible()
})

test("A scene that is dropped during a lesson ends it and stands on the bench", async ({ page }) => {
  await lesson(page, "2-longer-or-heavier")
  await dropFile(page, "other.json", shippedText("short-hunting-rod"))
  await expect(room(page)).toHaveCount(0)
  await expect(nameField(page)).toHaveValue("Short rod for the woods")
})

test("A lesson in the address that does not come with the bench says so", async ({ page }) => {
  await openFlat(page, "./?lesson=unheard-of")
  await expect(page.getByRole("alert")).toContainText('lesson "unheard-of" does not come with the bench')
  await expect(handle(page, "front/rod:lengthMm")).toBeVisible()
})

test("A lesson is a picture in 3D where there can be one, with its side and its one handle", async ({ page }) => {
  await open(page, "./?lesson=3-splay")
  await expect(room(page).getByRole("application")).toHaveAttribute("aria-label", /from above/)
  await untilTouch(page)
  await expect(room(page).locator("[data-handle]")).toHaveCount(2)
  await expect(room(page).locator('[data-handle="front/vbar/right:splayDeg"]')).toBeVisible()
})
