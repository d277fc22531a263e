import { expect, type Page, test } from "@playwright/test"
import { open } from "./page"

const SCENE = "./?scene=beginner-one-rod"

/** Counts drawn frames: each begins by clearing the canvas. To be called before the page is opened. */
async function countFrames(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const counter = window as unknown as { drawnFrames: number }
    counter.drawnFrames = 0
    const clear = WebGL2RenderingContext.prototype.clear
    WebGL2RenderingContext.prototype.clear = function (mask) {
      // Three also clears its working textures; those have a frame buffer of their own bound.
      if (this.getParameter(this.FRAMEBUFFER_BINDING) === null) counter.drawnFrames++
      return clear.call(this, mask)
    }
  })
}

const frames = (page: Page): Promise<number> =>
  page.evaluate(() => (window as unknown as { drawnFrames: number }).drawnFrames)

/** Waits until no frame has been drawn for a while, and says how many were by then. */
async function settled(page: Page): Promise<number> {
  let last = -1
  await expect
    .poll(
      async () => {
        const now = await frames(page)
        const still = now === last
        last = now
        return still
      },
      { intervals: [600] },
    )
    .toBe(true)
  return last
}

const rod = (page: Page) => page.locator('[data-handle="front/rod:lengthMm"]')
const picture = (page: Page) => page.getByRole("application", { name: "3D picture" })
const side = (page: Page) => page.getByRole("button", { name: "Side", exact: true })

async function middle(page: Page): Promise<{ x: number; y: number }> {
  const box = await rod(page).boundingBox()
  if (box === null) throw new Error("the front rod's handle has no place")
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 }
}

test("one frame is drawn for a changed number and none while nothing changes", async ({ page }) => {
  await countFrames(page)
  await open(page, SCENE)
  await rod(page).focus()
  const before = await settled(page)
  expect(before).toBeGreaterThan(0)
  await page.keyboard.press("ArrowLeft")
  expect(await settled(page)).toBe(before + 1)
})

test("pointing at a part shows its card, leaving it takes the card away, and pressing it keeps the card", async ({
  page,
}) => {
  await open(page, SCENE)
  const card = page.locator(".view3d-card")
  await expect(card).toBeHidden()
  const { x, y } = await middle(page)
  await page.mouse.move(x - 60, y)
  await expect(card).toBeVisible()
  await expect(card).toContainText("Front rod")
  await expect(card).toContainText(/\d+\sg/)
  await expect(card).toContainText(/N·m nose-down/)
  await expect(card).toContainText(/% of the whole/)
  await page.mouse.move(x - 60, y + 150)
  await expect(card).toBeHidden()
  await page.mouse.click(x - 60, y)
  await page.mouse.move(x - 60, y + 150)
  await expect(card).toContainText("Front rod")
})

test("arrow keys turn and move the picture, plus nears it, and Home shows the bow from the side again", async ({
  page,
}) => {
  await open(page, SCENE)
  await expect(side(page)).toHaveAttribute("aria-pressed", "true")
  const way = async () => {
    const box = await page.getByText("to the target").boundingBox()
    if (box === null) throw new Error("the way to the target is not said")
    return box
  }
  const from = await way()
  await picture(page).focus()
  for (let press = 0; press < 7; press++) await page.keyboard.press("ArrowLeft")
  await expect(side(page)).toHaveAttribute("aria-pressed", "false")
  // Its far end comes nearer, and so lower in the picture.
  await expect.poll(async () => (await way()).y - from.y).toBeGreaterThan(2)
  const at = await middle(page)
  await page.keyboard.press("Shift+ArrowLeft")
  await expect.poll(async () => at.x - (await middle(page)).x).toBeGreaterThan(10)
  const moved = await way()
  await page.keyboard.press("+")
  await expect.poll(async () => (await way()).y - moved.y).toBeGreaterThan(2)
  await page.keyboard.press("Home")
  await expect(side(page)).toHaveAttribute("aria-pressed", "true")
  await expect.poll(async () => Math.abs((await way()).y - from.y)).toBeLessThan(1.5)
})

test("dragging the picture turns it by mouse and by touch; dragging a handle does not", async ({ page }) => {
  await open(page, SCENE)
  const { x, y } = await middle(page)
  await page.mouse.move(x, y)
  await page.mouse.down()
  await page.mouse.move(x - 70, y, { steps: 3 })
  await page.mouse.up()
  await expect(side(page)).toHaveAttribute("aria-pressed", "true")

  const box = await picture(page).boundingBox()
  if (box === null) throw new Error("the picture has no place")
  const empty = { x: box.x + box.width * 0.5, y: box.y + box.height * 0.78 }
  await page.mouse.move(empty.x, empty.y)
  await page.mouse.down()
  await page.mouse.move(empty.x + 50, empty.y - 20, { steps: 3 })
  await page.mouse.up()
  await expect(side(page)).toHaveAttribute("aria-pressed", "false")

  await side(page).click()
  await expect(side(page)).toHaveAttribute("aria-pressed", "true")
  const touch = await page.context().newCDPSession(page)
  const send = (type: "touchStart" | "touchMove" | "touchEnd", places: { x: number; y: number }[]) =>
    touch.send("Input.dispatchTouchEvent", { type, touchPoints: places })
  await send("touchStart", [empty])
  for (const step of [1, 2, 3]) await send("touchMove", [{ x: empty.x + 20 * step, y: empty.y }])
  await send("touchEnd", [])
  await expect(side(page)).toHaveAttribute("aria-pressed", "false")
})

test("a lost graphics context that comes back leaves the picture; one that stays lost gives the flat drawing", async ({
  page,
}) => {
  await open(page, SCENE)
  const context = (act: "loseContext" | "restoreContext") =>
    page.evaluate((name) => {
      const store = window as unknown as { losing: WEBGL_lose_context | null | undefined }
      store.losing ??= document.querySelector("canvas")?.getContext("webgl2")?.getExtension("WEBGL_lose_context")
      store.losing?.[name]()
    }, act)
  await context("loseContext")
  await page.waitForTimeout(300)
  await context("restoreContext")
  // Longer than the picture waits before it gives up.
  await page.waitForTimeout(3000)
  await expect(picture(page)).toBeVisible()
  await context("loseContext")
  await expect(page.getByText("the graphics card stopped drawing")).toBeVisible()
  await expect(picture(page)).toHaveCount(0)
})
