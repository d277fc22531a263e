import { expect, type Locator, type Page, test } from "@playwright/test"
import { nudge } from "../../src/words/fr/nudge"
import { press } from "./page"
import { openFlat, showSheet } from "./panelsPage"

const scene = "target-recurve-straight-bar"
const swinging = "field-recurve-swinging-weights"
const button = (page: Page, name: string) => page.getByRole("button", { name, exact: true })

declare global {
  interface Window {
    /** By name, what was said or shown since somebody began to listen. */
    heard: Record<string, string[]>
  }
}

/** Keeps what an element says from now on: its text, or an attribute of it. */
async function listen(element: Locator, name: string, attribute: string | null = null): Promise<void> {
  await element.evaluate(
    (node, [key, of]) => {
      const list: string[] = []
      window.heard = { ...window.heard, [key]: list }
      const say = () => list.push((of === null ? node.textContent : node.getAttribute(of)) ?? "")
      new MutationObserver(say).observe(
        node,
        of === null ? { childList: true, characterData: true, subtree: true } : { attributeFilter: [of] },
      )
    },
    [name, attribute] as const,
  )
}

const heard = (page: Page, name: string): Promise<string[]> => page.evaluate((key) => window.heard[key]!, name)

/** The region that says what was just done. */
const spoken = (page: Page) => page.locator(".visually-hidden[role=status]")

async function nudged(page: Page): Promise<void> {
  await openFlat(page, scene)
  await button(page, "Hold to compare").click()
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 3)
  await showSheet(page, "Nudge")
  await expect(page.locator(".nudge-bow")).toHaveCount(2)
}

test("while a nudge plays nothing is said, and where it ends is said once", async ({ page }) => {
  await nudged(page)
  const plot = page.getByRole("slider", { name: /^Yaw against time/ })
  const time = page.getByRole("slider", { name: /^Time after/ })
  await page.getByRole("radio", { name: "Real time" }).check()
  await plot.focus()
  await listen(page.locator(".nudge-angle").first(), "picture")
  await listen(plot, "plot", "aria-valuetext")
  await listen(time, "time", "aria-valuetext")
  await listen(spoken(page), "spoken")
  // The keyboard stays with the plot, whose every change would be read aloud.
  await button(page, "Play").evaluate((play: HTMLElement) => play.click())
  await expect.poll(async () => (await heard(page, "spoken")).length, { timeout: 20_000 }).toBeGreaterThan(0)
  await expect.poll(() => heard(page, "time")).toContain("1000\u00a0ms")
  const [seen, ofPlot, ofTime] = await Promise.all(["picture", "plot", "time"].map((name) => heard(page, name)))
  expect(new Set(seen).size).toBeGreaterThan(4)
  expect(new Set(ofPlot).size).toBeLessThan(new Set(seen).size / 2)
  expect(new Set(ofTime).size).toBeLessThan(new Set(seen).size / 2)
  expect(await heard(page, "spoken")).toEqual([
    expect.stringMatching(/^1000\u00a0ms: this bow .* left; held .* left\.$/),
  ])
})

test("several steps of a nudge are said once, and the slider's own steps by the slider alone", async ({ page }) => {
  await nudged(page)
  const time = page.getByRole("slider", { name: /^Time after/ })
  await listen(spoken(page), "spoken")
  await button(page, "Step on").evaluate((step: HTMLElement) => {
    for (let times = 0; times < 4; times++) step.click()
  })
  const steps = [expect.stringMatching(/^40\u00a0ms: this bow /)]
  await expect.poll(() => heard(page, "spoken")).toEqual(steps)
  await listen(time, "time", "aria-valuetext")
  await time.press("ArrowRight")
  await expect.poll(() => heard(page, "time")).toEqual(["41\u00a0ms"])
  await time.press("ArrowRight")
  await expect.poll(() => heard(page, "time")).toEqual(["41\u00a0ms", "42\u00a0ms"])
  await button(page, "Step back").click()
  const back = expect.stringMatching(/^30\u00a0ms: this bow /)
  await expect.poll(() => heard(page, "spoken")).toEqual([...steps, back])
})

test("while a swing weight moves nothing is said, and where it comes to rest is said once", async ({ page }) => {
  await openFlat(page, swinging)
  await showSheet(page, "Hills")
  await button(page, "Start").click()
  await button(page, "Reset").click()
  await listen(spoken(page), "spoken")
  await button(page, "Start").click()
  const plot = page.getByRole("slider", { name: /^Angle from plumb against time/ })
  await plot.focus()
  await listen(plot, "plot", "aria-valuetext")
  await listen(page.locator(".plot-reading").nth(1), "reading")
  await expect
    .poll(() => heard(page, "spoken"), { timeout: 30_000 })
    .toEqual([expect.stringMatching(/^\d+\.\d\d\u00a0s: bow 30° up, .* locked\.$/)])
  const [read, ofPlot] = await Promise.all(["reading", "plot"].map((name) => heard(page, name)))
  expect(new Set(read).size).toBeGreaterThan(10)
  expect(new Set(ofPlot).size).toBeLessThan(new Set(read).size / 2)
})

test("with less motion asked for, several steps of a swing weight are said once", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "reduce" })
  await openFlat(page, swinging)
  await showSheet(page, "Hills")
  await listen(spoken(page), "spoken")
  await button(page, "Start").click()
  const start = expect.stringMatching(/^0\.00\u00a0s: bow 15° up, /)
  await expect.poll(() => heard(page, "spoken")).toEqual([start])
  await button(page, "Step on").evaluate((step: HTMLElement) => {
    for (let times = 0; times < 3; times++) step.click()
  })
  await expect.poll(() => heard(page, "spoken")).toEqual([start, expect.stringMatching(/^0\.60\u00a0s: bow /)])
})

test("the names at the ends of a plot's lines have room in French too", async ({ page }) => {
  await page.goto(`./?scene=${scene}&language=fr`)
  await page.locator("html[data-ready=true]").waitFor({ timeout: 30_000 })
  await page.locator("#sheet-tab-Nudge").click()
  await page.locator(".nudge-alone button").click()
  const plot = page.locator(".plot").nth(1)
  await expect(plot.getByRole("slider")).toHaveAccessibleName(new RegExp(nudge.others))
  await page.locator("input[type=range].nudge-scrubber").waitFor()
  await press(page, "front/rod:lengthMm", "Shift+ArrowDown", 3)
  const longest = nudge.bowTurns(nudge.bows.held, nudge.motionsWithin.pitch)
  const { room, needed } = await plot.evaluate((element, words) => {
    const over = element.querySelector(".u-over")!.getBoundingClientRect()
    const canvas = element.querySelector("canvas")!.getBoundingClientRect()
    const ctx = document.createElement("canvas").getContext("2d")!
    ctx.font = `12px ${getComputedStyle(document.documentElement).fontFamily}`
    return { room: canvas.right - over.right, needed: ctx.measureText(words).width }
  }, longest)
  expect(room).toBeGreaterThan(needed)
})
