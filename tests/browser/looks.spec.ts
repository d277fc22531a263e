import { join } from "node:path"
import { expect, type Page, test } from "@playwright/test"
import { newScene } from "../../src/scene/templates"
import { serializeScene } from "../../src/scene/serialize"
import { barriers, dropFile, nameField, open, openFlat, shippedIds } from "./page"

test.describe.configure({ mode: "parallel" })

const sizes = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const

/** Where things stand in the window, px. */
interface Box {
  readonly name: string
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

async function boxes(page: Page, selectors: Readonly<Record<string, string>>): Promise<Box[]> {
  return page.evaluate(
    (wanted) =>
      Object.entries(wanted).flatMap(([name, selector]) =>
        [...document.querySelectorAll(selector)].map((element, index) => {
          const { left, top, right, bottom } = element.getBoundingClientRect()
          return { name: index === 0 ? name : `${name} ${index + 1}`, left, top, right, bottom }
        }),
      ),
    selectors,
  )
}

/** Pairs that lie over each other, by more than half a pixel of rounding. */
function overlapping(all: readonly Box[]): string[] {
  const meet = (a: Box, b: Box) =>
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > 0.5 &&
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 0.5
  return all.flatMap((a, index) => all.slice(index + 1).flatMap((b) => (meet(a, b) ? [`${a.name} and ${b.name}`] : [])))
}

const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)

const LAID_OUT = {
  header: ".bar",
  figure: ".big-figure",
  views: ".stage-views",
  pose: ".bench-pose",
  tabs: ".sheet-tabs",
}

for (const size of sizes) {
  test(`at ${size.width}×${size.height} nothing scrolls sideways, the picture and its figures are in view, and nothing lies over another, whatever the notice or name`, async ({
    page,
  }) => {
    await page.setViewportSize(size)
    await open(page)
    for (const name of await page.getByRole("tab").allTextContents()) {
      await page.getByRole("tab", { name, exact: true }).click()
      await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
      expect(await sideways(page), name).toBe(0)
      const panel = page.getByRole("tabpanel")
      expect(await panel.evaluate((sheet) => sheet.scrollWidth - sheet.clientWidth), `${name} sheet`).toBe(0)
    }
    await page.getByRole("tab", { name: "Balance" }).click()
    const tabs = page.getByRole("tab")
    const heights = await tabs.evaluateAll((all) => all.map((tab) => Math.round(tab.getBoundingClientRect().height)))
    expect(new Set(heights).size, "tabs of one height").toBe(1)
    const tops = await tabs.evaluateAll((all) => all.map((tab) => Math.round(tab.getBoundingClientRect().top)))
    expect(new Set(tops).size, "rows of tabs").toBe(2)
    expect(await tabs.evaluateAll((all) => all.filter((tab) => tab.scrollWidth > tab.clientWidth).length)).toBe(0)
    await page.evaluate(() => scrollTo(0, 0))

    const all = await boxes(page, { picture: ".stage", ...LAID_OUT })
    const inView = all.filter(({ name }) => /^(picture|header|figure|views)/.test(name))
    expect(inView).toHaveLength(6)
    for (const { name, left, top, right, bottom } of inView) {
      expect(left, name).toBeGreaterThanOrEqual(0)
      expect(top, name).toBeGreaterThanOrEqual(0)
      expect(right, name).toBeLessThanOrEqual(size.width)
      expect(bottom, name).toBeLessThanOrEqual(size.height)
    }
    const picture = all.find(({ name }) => name === "picture")!
    const share = ((picture.right - picture.left) * (picture.bottom - picture.top)) / (size.width * size.height)
    // On a tablet the sheet takes a third; the picture stays the largest thing on the page.
    expect(share).toBeGreaterThan(0.4)
    expect(overlapping(await boxes(page, LAID_OUT))).toEqual([])

    // A notice with many lines covers neither the figures nor the buttons around the picture.
    await dropFile(page, "odd.json", JSON.stringify({ ...newScene(), a: 2, b: 3, c: 5, d: 7 }))
    await expect(page.getByRole("alert")).toBeVisible()
    expect(await sideways(page)).toBe(0)
    const { header, figure, views } = LAID_OUT
    expect(overlapping(await boxes(page, { notice: ".notice", header, figure, views }))).toEqual([])
    await page.getByRole("alert").getByRole("button", { name: "Close" }).click()

    // Nor does a very long name, in one word or many, push anything out of place.
    for (const name of ["W".repeat(200), "a very long name ".repeat(11).trim()]) {
      const accessories = [{ name: name.slice(0, 120), massG: 57, centreMm: [30, 50, 7] }]
      await dropFile(page, `${name}.json`, serializeScene({ ...newScene(), name, accessories } as never))
      await expect(nameField(page)).toHaveValue(name)
      for (const sheet of ["Rig", "Balance"]) {
        await page.getByRole("tab", { name: sheet }).click()
        await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
        expect(await sideways(page), sheet).toBe(0)
      }
      const laid = await boxes(page, LAID_OUT)
      expect(overlapping(laid)).toEqual([])
      for (const { name: what, right } of laid) expect(right, what).toBeLessThanOrEqual(size.width)
    }
  })
}

for (const theme of ["light", "dark"] as const) {
  test(`in the ${theme} theme no sheet and no dialog puts a serious barrier in anybody's way`, async ({ page }) => {
    // Nine readings of the whole tree of elements, each of seconds where other work shares the machine.
    test.slow()
    await page.emulateMedia({ colorScheme: theme, reducedMotion: "reduce" })
    await open(page, `./?scene=${shippedIds.find((id) => id.includes("swinging"))}`)
    await expect(page.locator("html")).toHaveAttribute("data-theme", theme)
    expect(await barriers(page), "the whole page").toEqual([])
    // Then only what is new each time.
    for (const name of (await page.getByRole("tab").allTextContents()).slice(1)) {
      await page.getByRole("tab", { name, exact: true }).click()
      await expect(page.getByRole("tabpanel").getByText("Loading…")).toHaveCount(0)
      expect(await barriers(page, ".sheet"), name).toEqual([])
    }
    await page.getByRole("button", { name: "Settings" }).click()
    await expect(page.getByRole("dialog", { name: "Settings" })).toBeVisible()
    expect(await barriers(page, "dialog[open]"), "Settings").toEqual([])
    await page.keyboard.press("Escape")
    await page.getByRole("button", { name: "Save as…" }).click()
    await expect(page.getByRole("dialog", { name: "Save as" })).toBeVisible()
    expect(await barriers(page, "dialog[open]"), "Save as").toEqual([])
    await page.keyboard.press("Escape")
    await dropFile(page, "odd.json", "{")
    await expect(page.getByRole("alert")).toBeVisible()
    expect(await barriers(page, ".notice"), "a notice").toEqual([])
  })
}

/** What has the focus: its name, whether a handle, and whether one can see that it has the focus. */
const focused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement
    if (element === null || element === document.body) return null
    const seen = (of: Element) => {
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(of)
      return (outlineStyle !== "none" && Number.parseFloat(outlineWidth) >= 1) || boxShadow !== "none"
    }
    const { width, height } = element.getBoundingClientRect()
    return {
      name: element.getAttribute("aria-label") ?? element.textContent?.trim() ?? "",
      role: element.getAttribute("role") ?? element.tagName.toLowerCase(),
      handle: element.getAttribute("data-handle"),
      visible: width > 0 && height > 0 && [element, ...element.querySelectorAll("*")].some(seen),
    }
  })

test("the Tab key alone reaches every button, handle, slider and tab in the order they are read, each with a visible focus", async ({
  page,
}) => {
  await open(page)
  const reached = []
  for (let count = 0; count < 120; count++) {
    await page.keyboard.press("Tab")
    const here = await focused(page)
    if (here === null) break
    reached.push(here)
  }
  expect(reached.filter(({ visible }) => !visible)).toEqual([])
  const names = reached.map(({ name }) => name)
  const expected = ["New", "Examples", "Open…", "Save", "Save as…", "Undo", "Redo", "Settings", "Side", "Flat drawing"]
  expect(names.filter((name) => expected.includes(name))).toEqual(expected)
  const shown = await page.locator("[data-handle]:visible").evaluateAll((all) => all.map((at) => at.dataset.handle))
  expect(shown.length).toBeGreaterThan(5)
  expect(reached.flatMap((at) => at.handle ?? []).sort()).toEqual([...shown].sort())
  // Draw, slope and cant, then the one tab stop of the sheet's tabs.
  const sliders = reached.filter(({ role }) => role === "input").length
  expect(sliders).toBeGreaterThanOrEqual(4)
  expect(reached.filter(({ role }) => role === "tab").map(({ name }) => name)).toEqual(["Balance"])
  const place = (name: string) => names.indexOf(name)
  const firstHandle = reached.findIndex((at) => at.handle !== null)
  expect(place("Settings")).toBeLessThan(firstHandle)
  expect(firstHandle).toBeLessThan(place("Balance"))
})

test("everything can be done without a pointer: a rod, a disc, the slope, a typed number and back", async ({
  page,
}) => {
  await openFlat(page)
  const tabTo = async (wanted: (at: NonNullable<Awaited<ReturnType<typeof focused>>>) => boolean) => {
    for (let count = 0; count < 120; count++) {
      await page.keyboard.press("Tab")
      const here = await focused(page)
      if (here !== null && wanted(here)) return
    }
    throw new Error("the Tab key never got there")
  }
  const mass = () => page.locator('[data-readout="massG"]').getAttribute("data-value").then(Number)
  const moment = () => page.locator('[data-readout="noseDownNm"]').getAttribute("data-value").then(Number)
  const [firstMass, firstMoment] = [await mass(), await moment()]
  await tabTo((at) => at.handle === "front/rod:lengthMm")
  await page.keyboard.press("Shift+ArrowRight")
  await expect.poll(moment).toBeGreaterThan(firstMoment)
  await tabTo((at) => at.handle === "front/weights:count")
  await page.keyboard.press("ArrowUp")
  await expect.poll(mass).toBeGreaterThan(firstMass)
  await tabTo((at) => at.role === "tab")
  await page.keyboard.press("ArrowRight")
  await expect(page.getByRole("tab", { name: "Rig" })).toBeFocused()
  for (let step = 0; step < 2; step++) await page.keyboard.press("Control+z")
  await expect.poll(mass).toBe(firstMass)
  await expect.poll(moment).toBe(firstMoment)
})

// Written on demand only: a test run leaves the working tree as it was.
if (process.env.BENCH_PICTURES === "1") {
  test("the picture of the bench for the README", async ({ page }) => {
    await page.setViewportSize(sizes[0])
    await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" })
    await open(page, "./?scene=target-recurve-drooped-bar")
    // The last of the lazily loaded parts stand.
    await page.waitForLoadState("networkidle")
    await page.screenshot({ path: join(import.meta.dirname, "../../assets/bench.png") })
  })

  test("the picture of a lesson on the big screen for the README", async ({ page }) => {
    await page.setViewportSize({ width: 1280, height: 720 })
    await page.emulateMedia({ colorScheme: "light", reducedMotion: "reduce" })
    await open(page, "./?lesson=1-weight-forward")
    const room = page.getByRole("dialog")
    await room.getByRole("button", { name: "Big screen" }).click()
    await page.keyboard.press("PageDown")
    await room.getByRole("button", { name: "It grows by far more" }).click()
    await expect(room.locator(".lesson-reply")).toBeVisible()
    await page.waitForLoadState("networkidle")
    await page.waitForTimeout(1000)
    await page.screenshot({ path: join(import.meta.dirname, "../../assets/lesson.png") })
  })
}
