import { expect, type Page, test } from "@playwright/test"
import { dragByMouse, middle, openFlat, touch, wayOf } from "./handlesPage"
import { handle, handleValue, numberShown, open, press } from "./page"
import { undo, undoTheOneStep } from "./panelsPage"

test.describe.configure({ mode: "parallel" })

const DRAW = "pose:draw"
const NOCK = "bow:nockHeightMm"
const ELBOW = "archer:elbowElevationDeg"
const ROD = "front/rod:lengthMm"

/** The knob goes in steps of a hundredth of the draw, a few px. */
const STEP_PX = 4

const undoable = (page: Page) => page.getByRole("button", { name: "Undo", exact: true })
const tip = (page: Page, line: "value" | "effect" | "reason") => page.locator(`.handle-tip-${line}`)

/** Pulls the nock back by so many px and gives how far its knob is from the pointer, px across or up, the larger. */
async function pullBack(page: Page, by: number): Promise<() => Promise<number>> {
  const at = handle(page, DRAW)
  const from = await middle(at)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  for (const part of [0.2, 0.5, 0.8, 1]) await page.mouse.move(from.x - by * part, from.y)
  await expect.poll(() => handleValue(at)).toBeGreaterThan(0.2)
  return async () => {
    const now = await middle(at)
    return Math.max(Math.abs(now.x - (from.x - by)), Math.abs(now.y - from.y))
  }
}

for (const picture of ["flat", "solid"] as const) {
  test(`the string is drawn by its knob, which follows the pointer through solved shapes (${picture})`, async ({
    page,
  }) => {
    if (picture === "flat") await openFlat(page)
    else await open(page, "./?scene=target-recurve-drooped-bar")
    const at = handle(page, DRAW)
    const [force, forward] = [await numberShown(page, "holdForceN"), await numberShown(page, "centreMm.forward")]
    expect(await handleValue(at)).toBe(0)
    const off = await pullBack(page, 70)
    await expect.poll(off).toBeLessThan(STEP_PX)
    await expect(tip(page, "value")).toHaveText(/^\d+\u00a0mm, \d\d\u00a0% drawn$/)
    await expect(tip(page, "effect")).toHaveText(/^\d+\.\d\u00a0N on the fingers$/)
    await expect.poll(() => numberShown(page, "holdForceN")).toBeGreaterThan(force + 10)
    await expect.poll(() => numberShown(page, "centreMm.forward")).toBeLessThan(forward)
    await page.mouse.up()
    await undoTheOneStep(page)
    await expect.poll(() => handleValue(at)).toBe(0)
  })
}

test("Escape lets a half-drawn string down again and leaves nothing to undo", async ({ page }) => {
  await openFlat(page)
  await pullBack(page, 70)
  await page.keyboard.press("Escape")
  await page.mouse.up()
  await expect.poll(() => handleValue(handle(page, DRAW))).toBe(0)
  await expect(undoable(page)).toHaveAttribute("aria-disabled", "true")
})

test("the draw goes by keys, to brace, to full draw and to a typed part, and is said in words", async ({ page }) => {
  await openFlat(page)
  const at = page.getByRole("slider", { name: "Draw", exact: true }).and(handle(page, DRAW))
  await at.focus()
  await expect(at).toHaveAttribute("aria-valuetext", /^\d+\u00a0mm, at brace; balance point \d+\u00a0mm ahead$/)
  const expected: [string, number][] = [
    ["ArrowRight", 0.01],
    ["Shift+ArrowUp", 0.11],
    ["ArrowDown", 0.1],
    ["End", 1],
    ["Home", 0],
  ]
  for (const [keys, wanted] of expected) {
    await press(page, DRAW, keys)
    await expect.poll(() => handleValue(at), { message: keys }).toBe(wanted)
  }
  await page.keyboard.press("End")
  await expect(at).toHaveAttribute("aria-valuetext", /^\d+\u00a0mm, full draw; /)
  await page.keyboard.press("Enter")
  await page.locator(".handle-typing input").fill("37")
  await page.keyboard.press("Enter")
  await expect.poll(() => handleValue(at)).toBe(0.37)
})

test("elbow and nock are to be had only while the bow is drawn and, in 3D, not seen edge-on", async ({ page }) => {
  await open(page, "./?scene=target-recurve-drooped-bar")
  await expect(handle(page, ELBOW)).toHaveCount(0)
  await expect(handle(page, NOCK)).toHaveCount(0)
  await press(page, DRAW, "End")
  await expect(handle(page, ELBOW)).toBeVisible()
  await expect(handle(page, NOCK)).toBeVisible()
  await page.getByRole("button", { name: "Top", exact: true }).click()
  await expect(handle(page, ELBOW)).toBeHidden()
  await expect(handle(page, NOCK)).toBeHidden()
  await expect(handle(page, DRAW)).toBeVisible()
})

/** A higher elbow pulls the nose down, a higher nock lifts it. */
const raises: readonly (readonly [key: string, sign: 1 | -1])[] = [
  [ELBOW, -1],
  [NOCK, 1],
]

for (const picture of ["flat", "solid"] as const) {
  test(`elbow and nock are dragged by mouse, and the lift follows (${picture})`, async ({ page }) => {
    if (picture === "flat") await openFlat(page)
    else await open(page, "./?scene=target-recurve-drooped-bar")
    await press(page, DRAW, "End")
    for (const [key, sign] of raises) {
      await test.step(key, async () => {
        const at = handle(page, key)
        const [value, lift] = [await handleValue(at), await numberShown(page, "fullDraw.liftNm")]
        await dragByMouse(page, key, 16, false)
        await expect.poll(() => handleValue(at)).toBeGreaterThan(value)
        expect(await handleValue(at), "a step in two px").toBeLessThanOrEqual(value + 8)
        await expect.poll(async () => sign * ((await numberShown(page, "fullDraw.liftNm")) - lift)).toBeGreaterThan(0.1)
        await expect(async () => {
          const change = (await numberShown(page, "fullDraw.liftNm")) - lift
          await expect(tip(page, "effect")).toHaveText(
            `lift ${change > 0 ? "+" : "\u2212"}${Math.abs(change).toFixed(2)}\u00a0N·m`,
            { timeout: 1000 },
          )
        }, "the last of the moves is said").toPass({ timeout: 10_000 })
        await page.mouse.up()
        await undo(page)
        await expect.poll(() => handleValue(at)).toBe(value)
        await expect.poll(() => numberShown(page, "fullDraw.liftNm")).toBe(lift)
      })
    }
  })
}

test("elbow and nock go by keyboard, a held key as one step, and say how the lift answers", async ({ page }) => {
  await openFlat(page)
  await press(page, DRAW, "End")
  for (const [key, sign] of raises) {
    await test.step(key, async () => {
      const at = handle(page, key)
      const [value, lift] = [await handleValue(at), await numberShown(page, "fullDraw.liftNm")]
      await at.focus()
      await expect(tip(page, "effect")).toHaveText(
        new RegExp(`^Each .+ higher ${sign > 0 ? "raises" : "lowers"} the lift by \\d\\.\\d\\d\\u00a0N·m\\.$`),
      )
      for (let repeat = 0; repeat < 3; repeat++) await page.keyboard.down("ArrowUp")
      await page.keyboard.up("ArrowUp")
      await expect.poll(() => handleValue(at)).toBeGreaterThan(value)
      await expect.poll(async () => sign * ((await numberShown(page, "fullDraw.liftNm")) - lift)).toBeGreaterThan(0.1)
      await expect(at).toHaveAttribute("aria-valuetext", /; lift \u2212?\d+\.\d\d\u00a0N·m at full draw$/)
      // By key, as all here: a handle says more to who comes to it with the keyboard.
      await page.keyboard.press("Control+z")
      await expect.poll(() => handleValue(at)).toBe(value)
    })
  }
})

test("a handle at the end of its range says that there is no more, by key and by drag", async ({ page }) => {
  await openFlat(page)
  await press(page, ROD, "End")
  await expect(tip(page, "reason")).toHaveText("No more than 2000\u00a0mm")
  await expect(page.locator("[role=status]").filter({ hasText: /Front rod length 2000/ })).toHaveCount(1)
  await press(page, ROD, "ArrowDown")
  await expect(tip(page, "reason")).toHaveText("")
  const stack = "front/weights:count"
  await dragByMouse(page, stack, -150, false)
  await expect.poll(() => handleValue(handle(page, stack))).toBe(0)
  await expect(tip(page, "reason")).toHaveText("No less than 0 discs")
  await page.mouse.up()
})

test.describe("with fingers", () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } })

  test("the string is drawn, and elbow and nock are dragged, by touch", async ({ page }) => {
    await openFlat(page)
    const session = await page.context().newCDPSession(page)
    const drag = async (key: string, length: number) => {
      const from = await middle(handle(page, key))
      const by = await wayOf(page, key, length)
      await touch(session, "touchStart", [from])
      for (const part of [0.3, 0.7, 1]) {
        await touch(session, "touchMove", [{ x: from.x + by.x * part, y: from.y + by.y * part }])
      }
      await touch(session, "touchEnd", [])
    }
    const lift = () => numberShown(page, "fullDraw.liftNm")
    await drag(DRAW, 60)
    await expect.poll(() => handleValue(handle(page, DRAW))).toBeGreaterThan(0.2)
    for (const [key, sign] of raises) {
      const [value, before] = [await handleValue(handle(page, key)), await lift()]
      await drag(key, 20)
      await expect.poll(() => handleValue(handle(page, key)), { message: key }).toBeGreaterThan(value)
      await expect.poll(async () => sign * ((await lift()) - before), { message: key }).toBeGreaterThan(0.1)
    }
  })
})
