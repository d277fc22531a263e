import { expect, type Locator, type Page, test } from "@playwright/test"
import { middle, touch, wayOf } from "./handlesPage"
import { handle, handleValue, numberShown, open, openFlat } from "./page"
import { showSheet, undoTheOneStep } from "./panelsPage"

test.describe.configure({ mode: "parallel" })

const SCENE = "./?scene=target-recurve-drooped-bar"
const ROD = "front/rod:lengthMm"
const SPLAY = "front/vbar/left:splayDeg"

/** Words over the picture, as many as there are, whether or not they have found room. */
const words = (page: Page, text: RegExp): Locator => page.locator(".view3d-labels .view3d-label", { hasText: text })

/** Switches by keys: a mouse that closes the window of settings would point at a part under it, and light that up. */
async function switchTo(page: Page, shown: boolean, ...names: string[]): Promise<void> {
  await page.getByRole("button", { name: "Settings" }).press("Enter")
  for (const name of names) {
    const box = page.getByRole("checkbox", { name, exact: true })
    if ((await box.isChecked()) !== shown) await box.press("Space")
    await expect(box).toBeChecked({ checked: shown })
  }
  await page.keyboard.press("Escape")
  await expect(page.getByRole("dialog")).toHaveCount(0)
}

/** The picture's own pixels: words, knobs and buttons over it are left out. */
const pixels = (page: Page): Promise<Buffer> =>
  page.locator(".view3d canvas").screenshot({
    style:
      ".view3d-labels, .stage-handles *, .stage-views, .bench-figures { opacity: 0 !important; transition: none !important }",
  })

/** What can be switched in Settings, and the words in the picture that come and go with it. */
const overlays: readonly { readonly name: string; readonly says: readonly RegExp[] }[] = [
  { name: "Inertia ellipsoid", says: [/^ellipsoid of the same mass/] },
  { name: "Pitch, roll and yaw arrows", says: [/^pitch \d/, /^yaw \d/, /^roll \d/] },
  { name: "Plumb line and moment arm", says: [/\smm ahead/] },
  { name: "Balance target", says: [/^balance target$/] },
  { name: "Ground, and the hillside on a slope", says: [/^to the target$/, /^0\.5\sm$/] },
]

test("each overlay takes its words out of the picture and brings them back, and no other's; Labels takes all", async ({
  page,
}) => {
  await open(page, SCENE)
  await switchTo(page, true, ...overlays.map(({ name }) => name))
  const expectWords = async (off: string | null) => {
    for (const { name, says } of overlays) {
      for (const text of says) {
        await expect(words(page, text), `${text} with ${off ?? "nothing"} off`).toHaveCount(name === off ? 0 : 1)
      }
    }
  }
  await expectWords(null)
  for (const { name } of overlays) {
    await switchTo(page, false, name)
    await expectWords(name)
    await switchTo(page, true, name)
  }
  await expectWords(null)

  const all = page.locator(".view3d-labels .view3d-label")
  const said = (await all.allTextContents()).sort()
  expect(said).toContain("grip")
  await switchTo(page, false, "Labels")
  await expect(all).toHaveCount(0)
  await switchTo(page, true, "Labels")
  await expect.poll(async () => (await all.allTextContents()).sort()).toEqual(said)
})

test("each overlay is drawn: without it the picture has other pixels, with it again the same", async ({ page }) => {
  await open(page, SCENE)
  await switchTo(page, true, ...overlays.map(({ name }) => name))
  await expect(words(page, /^ellipsoid of the same mass/)).toHaveCount(1)
  const whole = await pixels(page)
  expect((await pixels(page)).equals(whole), "an unchanged picture has the same pixels").toBe(true)
  for (const { name } of overlays) {
    await switchTo(page, false, name)
    await expect.poll(async () => (await pixels(page)).equals(whole), { message: `${name} off` }).toBe(false)
    await switchTo(page, true, name)
    await expect.poll(async () => (await pixels(page)).equals(whole), { message: `${name} on` }).toBe(true)
  }
})

test("each view button is pressed alone and moves the handles; back at Side they are where they were", async ({
  page,
}) => {
  await open(page, SCENE)
  const names = ["Side", "Top", "Archer's eye", "Free"]
  const button = (name: string) => page.getByRole("button", { name, exact: true })
  const places = async () => [await middle(handle(page, ROD)), await middle(handle(page, SPLAY))] as const
  const apart = (a: Awaited<ReturnType<typeof places>>, b: Awaited<ReturnType<typeof places>>) =>
    Math.max(...a.map((place, index) => Math.hypot(place.x - b[index]!.x, place.y - b[index]!.y)))
  const expectPressed = async (pressed: string) => {
    for (const name of names) {
      await expect(button(name), name).toHaveAttribute("aria-pressed", String(name === pressed))
    }
  }
  /** Where the handles are once the camera has come to rest. */
  const rested = async () => {
    let last = await places()
    await expect
      .poll(
        async () => {
          const now = await places()
          const moved = apart(now, last)
          last = now
          return moved
        },
        { intervals: [250] },
      )
      .toBeLessThan(0.01)
    return last
  }

  await expectPressed("Side")
  const seen = [await rested()]
  for (const name of names.slice(1)) {
    await button(name).click()
    await expectPressed(name)
    const before = seen.at(-1)!
    await expect.poll(async () => apart(await places(), before), { message: name }).toBeGreaterThan(10)
    const now = await rested()
    for (const other of seen) expect(apart(now, other), `${name} is a view of its own`).toBeGreaterThan(10)
    seen.push(now)
  }
  await button("Side").click()
  await expectPressed("Side")
  await expect.poll(async () => apart(await places(), seen[0]!)).toBeLessThan(0.5)
})

test("a pen drags the front rod to another length, as one undo step", async ({ page }) => {
  await open(page, SCENE)
  await page.evaluate(() => {
    const store = window as unknown as { pressedBy: string[] }
    store.pressedBy = []
    addEventListener("pointerdown", ({ pointerType }) => store.pressedBy.push(pointerType), true)
  })
  const [value, forward] = [await handleValue(handle(page, ROD)), await numberShown(page, "centreMm.forward")]
  const from = await middle(handle(page, ROD))
  const by = await wayOf(page, ROD, -60)
  const session = await page.context().newCDPSession(page)
  const pen = (type: "mousePressed" | "mouseMoved" | "mouseReleased", part: number) =>
    session.send("Input.dispatchMouseEvent", {
      type,
      x: from.x + by.x * part,
      y: from.y + by.y * part,
      button: "left",
      buttons: type === "mouseReleased" ? 0 : 1,
      clickCount: type === "mouseMoved" ? 0 : 1,
      pointerType: "pen",
    })
  await pen("mousePressed", 0)
  for (const part of [0.3, 0.7, 1]) await pen("mouseMoved", part)
  await pen("mouseReleased", 1)
  expect(await page.evaluate(() => (window as unknown as { pressedBy: string[] }).pressedBy)).toEqual(["pen"])
  await expect.poll(() => handleValue(handle(page, ROD))).toBeLessThan(value - 20)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeLessThan(forward)
  await undoTheOneStep(page)
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(value)
})

test.describe("with a finger", () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } })

  test("in the solid picture a rod is dragged by touch, as one undo step, and the camera stays", async ({ page }) => {
    await open(page, SCENE)
    const value = await handleValue(handle(page, ROD))
    const from = await middle(handle(page, ROD))
    const by = await wayOf(page, ROD, -60)
    const session = await page.context().newCDPSession(page)
    await touch(session, "touchStart", [from])
    for (const part of [0.3, 0.7, 1]) {
      await touch(session, "touchMove", [{ x: from.x + by.x * part, y: from.y + by.y * part }])
    }
    await touch(session, "touchEnd", [])
    await expect.poll(() => handleValue(handle(page, ROD))).toBeLessThan(value - 20)
    await expect(page.getByRole("button", { name: "Side", exact: true })).toHaveAttribute("aria-pressed", "true")
    await undoTheOneStep(page)
    await expect.poll(() => handleValue(handle(page, ROD))).toBe(value)
  })
})

for (const [width, height] of [
  [1440, 900],
  [1024, 768],
] as const) {
  test(`at ${width}×${height} wheeling past the end of a sheet leaves the page where it is`, async ({ page }) => {
    await page.setViewportSize({ width, height })
    await openFlat(page, SCENE)
    for (const name of ["Balance", "Bow", "Draw"]) {
      await showSheet(page, name)
      const sheet = page.locator(`#sheet-${name}`)
      await expect(sheet.locator(".sheet-loading")).toHaveCount(0)
      const box = (await sheet.boundingBox())!
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2)
      const below = () => sheet.evaluate((at) => at.scrollHeight - at.clientHeight - at.scrollTop)
      await expect
        .poll(async () => {
          await page.mouse.wheel(0, 4000)
          return below()
        })
        .toBeLessThanOrEqual(1)
      await page.mouse.wheel(0, 4000)
      await page.waitForTimeout(300)
      const { scrollTop, beyond } = await page.evaluate(() => ({
        scrollTop: document.documentElement.scrollTop,
        beyond: document.documentElement.scrollHeight - innerHeight,
      }))
      expect(scrollTop, `${name}: the page has scrolled`).toBe(0)
      expect(beyond, `${name}: the page is longer than the window`).toBeLessThanOrEqual(0)
    }
  })
}
