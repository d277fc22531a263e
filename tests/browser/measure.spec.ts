import { readFile } from "node:fs/promises"
import { expect, type Locator, type Page, test } from "@playwright/test"
import type { Measurement, Scene } from "../../src/scene/schema"
import { serializeScene } from "../../src/scene/serialize"
import { hung, onBow, weighed, wholeSession } from "../scene/measure/sessions"
import { barriers, dropFile, numberShown, open, reported, sceneIn, shippedText, untilReady } from "./page"
import { openFlat, showSheet, undo } from "./panelsPage"

const SHIPPED = "target-recurve-straight-bar"
/** The bow in the coach's hands: the shipped one with a heavier riser whose centre is further forward. */
const shipped = sceneIn(shippedText(SHIPPED))
const real: Scene = {
  ...shipped,
  bow: { ...shipped.bow, riser: { ...shipped.bow.riser, massG: 1331, centreMm: [29, 7, 2] } },
}

const number = (page: Page, name: string): Locator => page.locator(`.measure-sheet input[data-draft="${name}"]`)
const readingRows = (page: Page): Locator => page.locator(".readings > li")
const add = (page: Page): Locator => page.getByRole("button", { name: "Add the reading" })

async function step(page: Page, name: "Weigh" | "Hang" | "Swing" | "Twist"): Promise<void> {
  await page.getByRole("radio", { name, exact: true }).focus()
  await page.keyboard.press("Space")
}

async function type(field: Locator, value: number): Promise<void> {
  await field.fill(String(Math.round(value * 1e4) / 1e4))
}

/** Takes a reading of the bare bow as a coach would: the numbers typed, the rest chosen. */
async function take(page: Page, reading: Measurement): Promise<void> {
  const before = await readingRows(page).count()
  if (reading.kind === "scale") {
    await step(page, "Weigh")
    await page.getByLabel("What is measured").selectOption("bow")
    await type(number(page, "massG"), reading.massG)
  } else if (reading.kind === "hang") {
    await step(page, "Hang")
    await page.getByLabel("What is measured").selectOption("bow")
    await page.getByLabel("Hung from").selectOption("own")
    for (const [k, mm] of reading.atMm.entries()) await type(number(page, `at${k}`), mm)
    await type(number(page, "slopeDeg"), reading.slopeDeg)
    await type(number(page, "cantDeg"), reading.cantDeg!)
  }
  await add(page).press("Enter")
  await expect(readingRows(page)).toHaveCount(before + 1)
}

test.describe("a bow measured at the bench", () => {
  test("by scale and hook gets its real riser in one undo step, and every number its ±", async ({ page }) => {
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    expect(await page.locator(".readout-spread").count()).toBe(0)
    await take(page, weighed(real, onBow))
    await expect(page.locator('[data-unknown="mass"]')).toHaveAttribute("data-known", "yes")
    await expect(page.locator('[data-unknown="forward"]')).toHaveAttribute("data-known", "no")
    await take(page, hung(real, onBow, [-190, 210, 11]))
    await expect(page.locator('[data-unknown="forward"]')).toHaveAttribute("data-known", "partly")
    await take(page, hung(real, onBow, [310, -71, -17]))
    for (const name of ["mass", "forward", "up", "side"]) {
      await expect(page.locator(`[data-unknown="${name}"]`)).toHaveAttribute("data-known", "yes")
    }
    await expect(page.locator('[data-unknown="pitch"]')).toHaveAttribute("data-known", "no")
    const before = await numberShown(page, "centreMm.forward")
    await page.getByRole("button", { name: "Put on the bow" }).click()
    await expect(page.getByText("The bow on the bench has this riser.")).toBeVisible()
    const spread = page.locator('[data-readout="centreMm.forward"] .readout-spread')
    await expect(spread).toHaveText(/^±\s\d+\.\d$/)
    // What the page shows is the real bow, to what was typed of it.
    expect(Math.abs((await numberShown(page, "massG")) - reported(real).massG!)).toBeLessThan(0.01)
    await showSheet(page, "Balance")
    await expect(page.locator('[data-readout="inertiaGrip.pitch"] .readout-spread')).toHaveText(/\?/)
    await undo(page)
    await expect(spread).toHaveCount(0)
    expect(await numberShown(page, "centreMm.forward")).toBe(before)
  })

  test("names the reading that is far off, and leaves it out at a press", async ({ page }) => {
    await openFlat(page, SHIPPED)
    const session = wholeSession(real, onBow)
    const wrong = { ...hung(real, onBow, [77, 300, 5]), slopeDeg: 19 } as Measurement
    await dropFile(
      page,
      "measured.json",
      serializeScene({ ...real, measurements: [...session, wrong, hung(real, onBow, [40, -310, 41])] }),
    )
    await showSheet(page, "Measure")
    const far = readingRows(page).nth(7)
    await expect(far).toHaveAttribute("data-suspect", "true")
    await expect(page.getByText(/^Reading 8 is far off/)).toBeVisible()
    await far.getByRole("checkbox", { name: /Counts/ }).press("Space")
    await expect(far).toContainText("Left out")
    await expect(page.getByText(/^Reading 8 is far off/)).toHaveCount(0)
    await expect(page.getByText("The bow on the bench has this riser.")).toBeVisible()
    await undo(page)
    await expect(far).toHaveAttribute("data-suspect", "true")
  })

  test("has its readings changed and removed in the list, and the fit follows", async ({ page }) => {
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    await take(page, weighed(real, onBow))
    const riser = page.locator('[data-measured="massG"]')
    const before = await riser.textContent()
    await page.getByRole("button", { name: "Change reading 1" }).click()
    await expect(page.getByRole("heading", { name: "Change reading 1" })).toBeFocused()
    await type(number(page, "massG"), 2000)
    await page.getByRole("button", { name: "Keep the change" }).click()
    await expect(page.getByRole("button", { name: "Change reading 1" })).toBeFocused()
    await expect(riser).not.toHaveText(before!)
    await expect(readingRows(page).first()).toContainText(/2000\sg/)
    await take(page, weighed(real, onBow))
    await page.getByRole("button", { name: "Remove reading 2" }).press("Enter")
    await expect(readingRows(page)).toHaveCount(1)
    await expect(page.getByRole("button", { name: "Remove reading 1" })).toBeFocused()
    await page.keyboard.press("Enter")
    await expect(readingRows(page)).toHaveCount(0)
    await expect(page.getByRole("heading", { name: "Take a reading" })).toBeFocused()
    await expect(riser).toHaveCount(0)
  })

  test("is asked next for what pins its balance point best, set up at a press", async ({ page }) => {
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    const best = page.getByRole("button", { name: /^Set up Hang it from/ }).first()
    const name = (await best.textContent())!.replace(/^Set up Hang it from: /, "")
    await best.click()
    await expect(page.getByRole("radio", { name: "Hang", exact: true })).toBeChecked()
    await expect(page.getByLabel("Hung from").locator("option:checked")).toHaveText(name)
  })
})

test("a bow that was only weighed is told so: what is assumed is no knowledge, and its verdict holds only with that", async ({
  page,
}) => {
  await openFlat(page, SHIPPED)
  await showSheet(page, "Measure")
  const known = page.locator("section", { has: page.getByRole("heading", { name: "What to measure next" }) })
  await expect(known).toContainText("Nothing measured says yet")
  await step(page, "Weigh")
  await page.getByLabel("What is measured").selectOption("bow")
  await number(page, "massG").fill("2,650")
  await expect(page.getByRole("alert")).toContainText("write 2650, or 2.65 with a decimal point")
  await expect(add(page)).toHaveAttribute("aria-disabled", "true")
  await number(page, "massG").fill("300")
  await add(page).press("Enter")
  await expect(page.getByText(/^Reading 1, 300\sg, is not above the \d+\sg that limbs/)).toBeVisible()
  await page.getByRole("button", { name: "Remove reading 1" }).press("Enter")
  await expect(readingRows(page)).toHaveCount(0)
  await take(page, weighed(real, onBow))
  await expect(known).toContainText("The readings alone do not determine")
  const verdict = page.locator(".big-figure .verdict").first()
  await expect(verdict).not.toContainText("assumed")
  await page.getByRole("button", { name: "Put on the bow" }).click()
  await expect(verdict).toContainText(", if the riser is as assumed")
  await expect(verdict).toHaveAttribute("data-standing", "untargeted")
})

test("what is typed is there after another sheet and after the page is loaded again, wrong or right", async ({
  page,
}) => {
  await openFlat(page, SHIPPED)
  await showSheet(page, "Measure")
  await step(page, "Hang")
  await number(page, "slopeDeg").fill("12.5")
  await number(page, "cantDeg").fill("two")
  await page.getByLabel("Note", { exact: true }).fill("by the window")
  await expect(page.getByRole("alert")).toContainText(/two.*a number from/)
  await expect(add(page)).toHaveAttribute("aria-disabled", "true")
  await showSheet(page, "Rig")
  await showSheet(page, "Measure")
  await expect(number(page, "cantDeg")).toHaveValue("two")
  await page.reload()
  await untilReady(page)
  await showSheet(page, "Measure")
  await expect(number(page, "slopeDeg")).toHaveValue("12.5")
  await expect(number(page, "cantDeg")).toHaveValue("two")
  await expect(page.getByLabel("Note", { exact: true })).toHaveValue("by the window")
})

test.describe("the device's tilt sensor", () => {
  /** Fakes a sensor that has to be asked for, and answers with `answer`. */
  const fakeSensor = (page: Page, answer: "granted" | "denied") =>
    page.addInitScript((given) => {
      Object.assign(DeviceOrientationEvent, { requestPermission: () => Promise.resolve(given) })
    }, answer)

  /**
   * Holds the device so for some seconds of the events' own time, swinging by `wobble` or still: beta and gamma in
   * degrees, as the sensor gives them, ten times a second whatever the machine is busy with.
   */
  const hold = (page: Page, beta: number, gamma: number, seconds: number, wobble = 0) =>
    page.evaluate(
      ([b, g, s, w]) => {
        const { dataset } = document.documentElement
        let at = Number(dataset.sensed ?? 5000)
        for (let count = 0; count < 10 * s!; count++) {
          at += 100
          const off = count % 2 === 0 ? w! : -w!
          const event = new DeviceOrientationEvent("deviceorientation", { alpha: 77, beta: b! + off, gamma: g! })
          Object.defineProperty(event, "timeStamp", { value: at })
          window.dispatchEvent(event)
        }
        dataset.sensed = String(at)
      },
      [beta, gamma, seconds, wobble],
    )
  const take = (page: Page) => page.getByRole("button", { name: "Take the tilt" })
  const zero = (page: Page) => page.getByRole("button", { name: /^Set zero/ })

  test("is asked for, zeroed on the level bow, and gives the tilt once the bow is at rest", async ({ page }) => {
    await fakeSensor(page, "granted")
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    await step(page, "Hang")
    await page.getByRole("button", { name: "Use this device's tilt sensor" }).click()
    await expect(zero(page)).toHaveAttribute("aria-disabled", "true")
    // On its foot on the bow's right side, screen to the archer's right: forward is to the right of the screen.
    await expect(async () => {
      await hold(page, 90, 0, 3)
      await expect(zero(page)).toHaveAttribute("aria-disabled", "false", { timeout: 500 })
    }, "readings count once the page listens").toPass()
    const now = page.locator(".tilt-now")
    await zero(page).click()
    await expect(now).not.toContainText("at rest")
    // Leaning back, the screen looks up and to the right: the bow's top is 20° to the left. At first it still swings.
    await hold(page, 70, 0, 3, 3)
    await expect(now).toContainText(/^Slope .*moving/)
    await expect(take(page)).toHaveAttribute("aria-disabled", "true")
    await hold(page, 70, 0, 3)
    await expect(now).toContainText("at rest")
    await take(page).click()
    await expect(number(page, "slopeDeg")).toHaveValue("0")
    await expect(number(page, "cantDeg")).toHaveValue("-20")
    // Turned in the plane of its screen until down is 20° nearer to its right edge: the front is lowered.
    await hold(page, 70, 90, 1)
    await expect(now).toContainText("moving")
    await hold(page, 70, 90, 2)
    await expect(now).toContainText("at rest")
    await take(page).click()
    await expect(number(page, "slopeDeg")).toHaveValue("-20")
    await expect(number(page, "cantDeg")).toHaveValue("0")
  })

  test("that is refused, or says nothing, is told in words, and the tilt can be typed", async ({ page }) => {
    await fakeSensor(page, "denied")
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    await step(page, "Hang")
    await page.getByRole("button", { name: "Use this device's tilt sensor" }).click()
    await expect(page.getByRole("alert")).toContainText("was not allowed")
    await page.evaluate(() => Object.assign(DeviceOrientationEvent, { requestPermission: undefined }))
    await page.getByRole("button", { name: "Use this device's tilt sensor" }).click()
    await expect(page.getByRole("alert")).toContainText("says nothing", { timeout: 8000 })
    await number(page, "slopeDeg").fill("7")
    await expect(number(page, "slopeDeg")).toHaveValue("7")
  })
})

test.describe("a screen reader", () => {
  /** Notes every sentence that is announced from now on; `heard` hands over those since the last time. */
  const listen = (page: Page) =>
    page.evaluate(() => {
      const said: string[] = []
      Object.assign(window, { said })
      const note = (node: Node) => {
        const live = (node instanceof Element ? node : node.parentElement)?.closest("[role=alert], [role=status]")
        if (live?.textContent) said.push(live.textContent)
      }
      new MutationObserver((changes) => {
        for (const { type, target, addedNodes } of changes)
          for (const node of type === "characterData" ? [target] : addedNodes) note(node)
      }).observe(document.body, { subtree: true, childList: true, characterData: true })
    })
  const heard = (page: Page) => page.evaluate(() => (window as unknown as { said: string[] }).said.splice(0))

  test("hears of a number that cannot be read once typing pauses, not at every key", async ({ page }) => {
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    await step(page, "Weigh")
    await listen(page)
    // Typed without a pause, however slow the machine: the page gets round to each key, but no timer in between.
    await number(page, "massG").evaluate(async (field: HTMLInputElement) => {
      const { set } = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, "value")!
      for (const text of ["t", "tw", "two", "two ", "two k"]) {
        set!.call(field, text)
        field.dispatchEvent(new InputEvent("input", { bubbles: true }))
        for (let turn = 0; turn < 20; turn++) await Promise.resolve()
      }
    })
    await expect(page.getByRole("alert")).toContainText("two k")
    expect(await heard(page)).toEqual([expect.stringContaining("two k")])
  })

  test("hears every tenth swing, and not the stopwatch's name anew at every tap", async ({ page }) => {
    await openFlat(page, SHIPPED)
    await showSheet(page, "Measure")
    await step(page, "Swing")
    await page.getByRole("button", { name: "Tap here once each swing, the same way", exact: true }).focus()
    await listen(page)
    await page.evaluate(async () => {
      for (let tap = 0; tap < 24; tap++) {
        const event = new KeyboardEvent("keydown", { key: " ", bubbles: true })
        Object.defineProperty(event, "timeStamp", { value: 5000 + 1370 * tap })
        document.activeElement!.dispatchEvent(event)
        await new Promise(requestAnimationFrame)
      }
    })
    await expect(page.getByRole("button", { name: "Tap at each swing", exact: true })).toBeFocused()
    await expect(page.locator(".stopwatch-count")).toHaveText("23")
    await expect.poll(() => page.getByRole("status").allTextContents()).toContain("20 swings")
    expect(await heard(page)).toEqual(["10 swings", "20 swings"])
  })
})

test("taps by key and by pointer count the swings and time them by the events' own times", async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(Event.prototype, "timeStamp", {
      get: () => Number(document.documentElement.dataset.clock ?? 1),
    })
  })
  await openFlat(page, SHIPPED)
  await showSheet(page, "Measure")
  await step(page, "Swing")
  const watch = page.locator(".stopwatch-tap")
  await watch.focus()
  // Six taps 1.37 s apart, whatever the machine is busy with.
  const taps = ["Space", "Enter", "Space", "pointer", "pointer", "pointer"]
  for (const [index, tap] of taps.entries()) {
    await page.evaluate(
      (at) => {
        document.documentElement.dataset.clock = String(at)
      },
      5000 + 1370 * index,
    )
    if (tap === "pointer") await watch.click()
    else await page.keyboard.press(tap)
  }
  await expect(page.locator(".stopwatch-count")).toHaveText("5")
  await expect(number(page, "count")).toHaveValue("5")
  await expect(number(page, "seconds")).toHaveValue("6.85")
  await page.getByRole("button", { name: "Start over" }).click()
  await expect(page.locator(".stopwatch-count")).toHaveText("0")
  await expect(number(page, "count")).toHaveValue("5")
})

test("a tap on the rod in the 3D picture is the place the bow hangs from", async ({ page }) => {
  await open(page, `./?scene=${SHIPPED}`)
  await showSheet(page, "Measure")
  await step(page, "Hang")
  await page.getByRole("button", { name: "Tap it in the picture" }).click()
  // Half way along the bare rod, where no handle lies.
  const ends = await Promise.all(
    ["front/rod:lengthMm", "front/extender:lengthMm"].map((key) =>
      page.locator(`[data-handle="${key}"]`).boundingBox(),
    ),
  )
  const middle = (box: { x: number; y: number; width: number; height: number } | null) => ({
    x: box!.x + box!.width / 2,
    y: box!.y + box!.height / 2,
  })
  const [outer, inner] = ends.map(middle)
  const at = { x: outer!.x * 0.6 + inner!.x * 0.4, y: outer!.y * 0.6 + inner!.y * 0.4 }
  await page.mouse.click(at.x, at.y)
  await expect(page.getByLabel("Hung from")).toHaveValue("own")
  expect(Number(await number(page, "at0").inputValue())).toBeGreaterThan(150)
  expect(await number(page, "at1").inputValue()).toBe(String(shipped.mounts.front!.atMm[1]))
})

test("tried setups are noted, compared, saved as a table and put on the bow again", async ({ page }) => {
  await openFlat(page, SHIPPED)
  const mass = await numberShown(page, "massG")
  await showSheet(page, "Measure")
  await page.getByRole("radio", { name: "Tried setups" }).focus()
  await page.keyboard.press("Space")
  await page.getByLabel("Name", { exact: true }).fill("all on")
  await page.getByLabel("How it felt, in a few words").fill("steady, slow")
  await page.getByRole("button", { name: "4", exact: true }).click()
  await page.getByLabel("Scores").fill("27, many")
  await page.getByRole("button", { name: "Note this setup" }).click()
  await expect(page.getByRole("alert")).toContainText("Scores are numbers")
  await page.getByLabel("Scores").fill("27, 25")
  await page.getByRole("button", { name: "Note this setup" }).click()
  await expect(readingRows(page)).toHaveCount(1)
  await expect(readingRows(page).first()).toContainText("felt 4 of 5: steady, slow · scores 27, 25, total 52")

  await showSheet(page, "Rig")
  const discs = page.locator('[data-handle="front/weights:count"]')
  await discs.focus()
  await page.keyboard.press("Home")
  await expect.poll(() => numberShown(page, "massG")).toBeLessThan(mass)
  await showSheet(page, "Measure")
  const change = page.getByRole("row", { name: /^Mass/ }).getByRole("cell").last()
  await expect(change).toHaveText(/^−\d+$/)

  const download = page.waitForEvent("download")
  await page.getByRole("button", { name: "Save the log as CSV" }).click()
  const file = await download
  expect(file.suggestedFilename()).toBe("tried-setups.csv")
  const [, line] = (await readFile(await file.path(), "utf8")).split("\r\n")
  expect(line).toMatch(/^1,\d{4}-\d\d-\d\d,all on,4,"steady, slow","27, 25",52,,/)

  await page.getByRole("button", { name: /^Hold to compare Setup 1/ }).click()
  await expect(page.locator('[data-beside="massG"]')).toHaveAttribute("data-value", String(mass))

  await page.getByRole("button", { name: /^Put on the bow Setup 1/ }).click()
  await expect.poll(() => numberShown(page, "massG")).toBe(mass)

  await page.getByRole("button", { name: /^Change Setup 1/ }).press("Enter")
  await page.getByLabel("Scores").fill("27, 29")
  await page.getByRole("button", { name: "Keep the change of setup 1" }).press("Enter")
  await expect(page.getByRole("button", { name: /^Change Setup 1/ })).toBeFocused()
  await page.getByRole("button", { name: /^Remove Setup 1/ }).press("Enter")
  await expect(readingRows(page)).toHaveCount(0)
  await expect(page.getByRole("heading", { name: "Tried setups" })).toBeFocused()
})

test("nothing on either page of the sheet stands in the way of assistive technology", async ({ page }) => {
  await openFlat(page, SHIPPED)
  await dropFile(page, "measured.json", serializeScene({ ...real, measurements: wholeSession(real, onBow) }))
  await showSheet(page, "Measure")
  await readingRows(page).first().waitFor()
  for (const name of ["Weigh", "Hang", "Swing", "Twist"] as const) {
    await step(page, name)
    expect(await barriers(page, ".sheet")).toEqual([])
  }
  await page.getByRole("radio", { name: "Tried setups" }).focus()
  await page.keyboard.press("Space")
  await page.getByRole("button", { name: "Note this setup" }).click()
  await readingRows(page).first().waitFor()
  expect(await barriers(page, ".sheet")).toEqual([])
})

test("on a phone, in inches and ounces, both pages keep within the screen and say their units", async ({ page }) => {
  await page.addInitScript(() => {
    const units = { massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" }
    localStorage.setItem("bow-balance-bench/preferences", JSON.stringify(units))
  })
  await page.setViewportSize({ width: 390, height: 844 })
  await openFlat(page, "target-recurve-measured")
  await showSheet(page, "Measure")
  await expect(page.locator('[data-measured="massG"] td').first()).toHaveText(/oz$/)
  await expect(page.locator('[data-measured="centreMm.forward"] td').first()).toHaveText(/in$/)
  const sideways = () => page.locator(".sheet-page:not([hidden])").evaluate((one) => one.scrollWidth - one.clientWidth)
  for (const name of ["Weigh", "Hang", "Swing", "Twist"] as const) {
    await step(page, name)
    expect(await sideways(), name).toBeLessThanOrEqual(0)
  }
  await step(page, "Weigh")
  await number(page, "massG").fill("100")
  await add(page).press("Enter")
  await expect(readingRows(page).last()).toContainText(/100\.00\soz/)
  await page.getByRole("radio", { name: "Tried setups" }).focus()
  await page.keyboard.press("Space")
  await readingRows(page).first().waitFor()
  expect(await sideways()).toBeLessThanOrEqual(0)
})
