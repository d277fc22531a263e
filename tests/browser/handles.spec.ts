import { expect, type Page, test } from "@playwright/test"
import { dragByMouse, middle, openFlat, touch, wayOf } from "./handlesPage"
import { handle, handleValue, numbersShown, numberShown, open, press } from "./page"
import { field, showSheet, undo, undoTheOneStep } from "./panelsPage"
import type { ReadoutKey } from "../../src/describe/readouts"

test.describe.configure({ mode: "parallel" })

const ROD = "front/rod:lengthMm"
const SPLAY = "front/vbar/left:splayDeg"
const OTHER_SPLAY = "front/vbar/right:splayDeg"
const STACK = "front/weights:count"
/** A mount of the compound that carries nothing. */
const UNUSED = "upper"

/** Scenes that have between them every kind of handle. */
const rigs = ["target-recurve-drooped-bar", "compound-front-and-back-bar", "field-recurve-swinging-weights"]

/** A number that a field of this name must change, whichever part it belongs to. */
const changed: Readonly<Record<string, ReadoutKey>> = {
  draw: "centreMm.forward",
  lengthMm: "inertiaGrip.yaw",
  count: "massG",
  splayDeg: "inertiaGrip.roll",
  droopDeg: "centreMm.up",
  stemLengthMm: "centreMm.up",
  "atMm.up": "centreMm.up",
  "atMm.forward": "centreMm.forward",
  pitchDeg: "centreMm.up",
  yawDeg: "centreMm.side",
}
const answerOf = (key: string): ReadoutKey => changed[key.slice(key.indexOf(":") + 1)]!

const keysOf = (page: Page): Promise<string[]> =>
  page.locator("[data-handle]").evaluateAll((all) => all.map((element) => element.getAttribute("data-handle") ?? ""))

for (const rig of rigs) {
  test(`every handle of ${rig} is dragged by mouse to another value, as one undo step`, async ({ page }) => {
    await openFlat(page, rig)
    const keys = await keysOf(page)
    expect(keys.length).toBeGreaterThan(5)
    for (const key of keys) {
      await test.step(key, async () => {
        const at = handle(page, key)
        const [value, before] = [await handleValue(at), await numberShown(page, answerOf(key))]
        await dragByMouse(page, key, 40)
        await expect.poll(() => handleValue(at), { message: key }).not.toBe(value)
        await expect.poll(() => numberShown(page, answerOf(key)), { message: key }).not.toBe(before)
        await undoTheOneStep(page)
        await expect.poll(() => handleValue(at)).toBe(value)
      })
    }
  })

  test(`every handle of ${rig} goes by keyboard to another value, a held key as one undo step`, async ({ page }) => {
    await openFlat(page, rig)
    for (const key of await keysOf(page)) {
      await test.step(key, async () => {
        const at = handle(page, key)
        const [value, before] = [await handleValue(at), await numberShown(page, answerOf(key))]
        await at.focus()
        for (let repeat = 0; repeat < 3; repeat++) await page.keyboard.down("ArrowUp")
        await page.keyboard.up("ArrowUp")
        await expect.poll(() => handleValue(at), { message: key }).toBeGreaterThan(value)
        await expect.poll(() => numberShown(page, answerOf(key)), { message: key }).not.toBe(before)
        await undoTheOneStep(page)
        await expect.poll(() => handleValue(at)).toBe(value)
      })
    }
  })
}

test.describe("with fingers", () => {
  test.use({ hasTouch: true, viewport: { width: 1024, height: 768 } })

  for (const rig of rigs) {
    test(`every handle of ${rig} is dragged by touch to another value, as one undo step`, async ({ page }) => {
      await openFlat(page, rig)
      const session = await page.context().newCDPSession(page)
      for (const key of await keysOf(page)) {
        await test.step(key, async () => {
          const at = handle(page, key)
          const [value, before] = [await handleValue(at), await numberShown(page, answerOf(key))]
          const from = await middle(at)
          const by = await wayOf(page, key, 45)
          await touch(session, "touchStart", [from])
          for (const part of [0.3, 0.7, 1]) {
            await touch(session, "touchMove", [{ x: from.x + by.x * part, y: from.y + by.y * part }])
          }
          await touch(session, "touchEnd", [])
          await expect.poll(() => handleValue(at), { message: key }).not.toBe(value)
          await expect.poll(() => numberShown(page, answerOf(key)), { message: key }).not.toBe(before)
          await undoTheOneStep(page)
          await expect.poll(() => handleValue(at)).toBe(value)
        })
      }
    })
  }

  test("a touch that the system takes away keeps what was reached, as one step, and frees the handle", async ({
    page,
  }) => {
    await openFlat(page)
    const session = await page.context().newCDPSession(page)
    const at = handle(page, ROD)
    const value = await handleValue(at)
    const from = await middle(at)
    await touch(session, "touchStart", [from])
    await touch(session, "touchMove", [{ x: from.x - 60, y: from.y }])
    await touch(session, "touchCancel", [])
    await expect.poll(() => handleValue(at)).toBeLessThan(value)
    const reached = await handleValue(at)
    await page.mouse.move(from.x + 200, from.y + 100)
    expect(await handleValue(at)).toBe(reached)
    await undoTheOneStep(page)
    await expect.poll(() => handleValue(at)).toBe(value)
  })

  test("a second finger on another handle does not disturb the first one's drag", async ({ page }) => {
    await openFlat(page)
    const session = await page.context().newCDPSession(page)
    const [rod, splay] = [handle(page, ROD), handle(page, SPLAY)]
    const [length, angle] = [await handleValue(rod), await handleValue(splay)]
    const [first, second] = [await middle(rod), await middle(splay)]
    await touch(session, "touchStart", [first])
    await touch(session, "touchMove", [{ x: first.x - 40, y: first.y }])
    await touch(session, "touchStart", [{ x: first.x - 40, y: first.y }, second])
    await touch(session, "touchMove", [
      { x: first.x - 70, y: first.y },
      { x: second.x, y: second.y - 40 },
    ])
    await touch(session, "touchEnd", [])
    await expect.poll(() => handleValue(rod)).toBeLessThan(length)
    expect(await handleValue(splay)).toBe(angle)
    await undoTheOneStep(page)
    await expect.poll(() => handleValue(rod)).toBe(length)
  })
})

test("Escape in mid-drag puts everything back, leaves nothing to undo, and the drag is over", async ({ page }) => {
  await openFlat(page)
  const before = await numbersShown(page)
  const value = await handleValue(handle(page, ROD))
  await dragByMouse(page, ROD, -90, false)
  await expect.poll(() => handleValue(handle(page, ROD))).toBeLessThan(value - 50)
  await page.keyboard.press("Escape")
  await expect.poll(() => numbersShown(page)).toEqual(before)
  await page.mouse.move(300, 300)
  await page.mouse.up()
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(value)
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true")
})

test("Escape while a key is held puts the value back", async ({ page }) => {
  await openFlat(page)
  const value = await handleValue(handle(page, ROD))
  await handle(page, ROD).focus()
  await page.keyboard.down("ArrowRight")
  await page.keyboard.down("ArrowRight")
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(value + 10)
  await page.keyboard.press("Escape")
  await page.keyboard.up("ArrowRight")
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(value)
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true")
})

test("an undo in mid-drag ends the drag", async ({ page }) => {
  await openFlat(page)
  const value = await handleValue(handle(page, ROD))
  await dragByMouse(page, ROD, -90, false)
  await expect.poll(() => handleValue(handle(page, ROD))).toBeLessThan(value)
  await page.keyboard.press("Control+z")
  const at = await middle(handle(page, ROD))
  await page.mouse.move(at.x - 150, at.y)
  await page.mouse.up()
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(value)
})

test("a press that hardly moves takes the focus and changes nothing", async ({ page }) => {
  await openFlat(page)
  const from = await middle(handle(page, ROD))
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x + 1, from.y + 1)
  await page.mouse.up()
  await expect(handle(page, ROD)).toBeFocused()
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true")
})

test("keys step, step coarsely and go to the limits", async ({ page }) => {
  await openFlat(page)
  const at = handle(page, ROD)
  const value = await handleValue(at)
  const expected: [string, number][] = [
    ["ArrowUp", value + 5],
    ["ArrowLeft", value],
    ["Shift+ArrowRight", value + 50],
    ["PageDown", value],
    ["PageUp", value + 50],
    ["End", 2000],
    ["ArrowUp", 2000],
    ["Home", 1],
  ]
  for (const [keys, wanted] of expected) {
    await press(page, ROD, keys)
    await expect.poll(() => handleValue(at), { message: keys }).toBe(wanted)
  }
})

test("a handle says its name, value, unit and effect, and a change is announced once it is done", async ({ page }) => {
  await openFlat(page)
  const at = page.getByRole("slider", { name: "Front rod length" })
  await at.focus()
  await expect(at).toHaveAttribute("aria-valuetext", /^\d+\u00a0mm; balance point \d+\u00a0mm ahead$/)
  const value = (await handleValue(at)) + 5
  await page.keyboard.press("ArrowUp")
  await expect(page.locator("[aria-live], [role=status]").filter({ hasText: /Front rod length/ })).toContainText(
    new RegExp(`Front rod length ${value}\\u00a0mm\\. Balance point \\d+\\u00a0mm ahead\\.`),
  )
})

test("with paired arms both splays move together, in one step", async ({ page }) => {
  await openFlat(page)
  const [left, right] = [handle(page, SPLAY), handle(page, OTHER_SPLAY)]
  const value = await handleValue(left)
  expect(await handleValue(right)).toBe(value)
  await press(page, SPLAY, "Shift+ArrowUp")
  await expect.poll(() => handleValue(left)).toBe(value + 5)
  await expect.poll(() => handleValue(right)).toBe(value + 5)
  await undoTheOneStep(page)
  await expect.poll(() => handleValue(right)).toBe(value)
})

test("Enter opens a field for the value; a wrong one is explained and kept, a right one is taken", async ({ page }) => {
  await openFlat(page)
  await press(page, ROD, "Enter")
  const field = page.locator(".handle-typing input")
  await expect(field).toBeFocused()
  await field.fill("3 metres")
  await page.keyboard.press("Enter")
  await expect(page.locator(".handle-typing [role=alert]")).toContainText("from 1 to 2000\u00a0mm")
  await expect(field).toHaveValue("3 metres")
  await expect(field).toHaveAttribute("aria-invalid", "true")
  await field.fill("612,5")
  await page.keyboard.press("Enter")
  await expect(field).toHaveCount(0)
  await expect.poll(() => handleValue(handle(page, ROD))).toBe(612.5)
  await expect(handle(page, ROD)).toBeFocused()
  await undoTheOneStep(page)
})

test("Escape leaves the field for the value without taking it", async ({ page }) => {
  await openFlat(page)
  const value = await handleValue(handle(page, ROD))
  await press(page, ROD, "Enter")
  await page.locator(".handle-typing input").fill("999")
  await page.keyboard.press("Escape")
  await expect(page.locator(".handle-typing")).toHaveCount(0)
  await expect(handle(page, ROD)).toBeFocused()
  expect(await handleValue(handle(page, ROD))).toBe(value)
})

test("a stack's knob adds and takes discs one by one", async ({ page }) => {
  await openFlat(page)
  const count = await handleValue(handle(page, STACK))
  const mass = await numberShown(page, "massG")
  await dragByMouse(page, STACK, 26)
  await expect.poll(() => handleValue(handle(page, STACK))).toBe(count + 2)
  await expect.poll(() => numberShown(page, "massG")).toBeGreaterThan(mass)
})

test("the switch at a chain's root puts an extender there and takes it away", async ({ page }) => {
  await openFlat(page, "compound-front-and-back-bar")
  const extender = handle(page, "front/extender:lengthMm")
  const forward = await numberShown(page, "centreMm.forward")
  await expect(extender).toHaveCount(0)
  await page.getByRole("button", { name: "Add an extender, front" }).click()
  await expect(extender).toHaveCount(1)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeGreaterThan(forward)
  await page.getByRole("button", { name: "Remove the extender, front" }).click()
  await expect(extender).toHaveCount(0)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBe(forward)
  await undo(page)
  await undoTheOneStep(page)
})

test("no two knobs lie on each other, and each is large enough to press", async ({ page }) => {
  for (const rig of rigs) {
    await openFlat(page, rig)
    const boxes = await page
      .locator("[data-knob]")
      .evaluateAll((all) => all.map((element) => element.getBoundingClientRect().toJSON() as DOMRect))
    for (const { width, height } of boxes) expect(Math.min(width, height)).toBeCloseTo(24, 2)
    boxes.forEach((a, index) => {
      for (const b of boxes.slice(index + 1)) expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeGreaterThanOrEqual(24)
    })
  }
})

test("in the solid picture a handle is dragged where its knob is, and the camera stays", async ({ page }) => {
  await open(page, `./?scene=${rigs[0]}`)
  const [rod, extender] = [handle(page, ROD), handle(page, "front/extender:lengthMm")]
  const [value, still] = [await handleValue(rod), await middle(extender)]
  const forward = await numberShown(page, "centreMm.forward")
  await dragByMouse(page, ROD, -70)
  await expect.poll(() => handleValue(rod)).toBeLessThan(value)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeLessThan(forward)
  const after = await middle(extender)
  expect(Math.hypot(after.x - still.x, after.y - still.y)).toBeLessThan(30)
  await undoTheOneStep(page)
  await expect.poll(() => handleValue(rod)).toBe(value)
})

test("the front mount and an unused one are dragged once one is at them in the Bow sheet", async ({ page }) => {
  await openFlat(page, "compound-front-and-back-bar")
  const front = handle(page, "mounts/front:atMm.forward")
  await expect(front).toHaveCount(0)
  await showSheet(page, "Bow")
  await page.locator("summary", { hasText: "Mounts" }).click()
  await field(page, "mounts/front:atMm.up").focus()
  const forward = await numberShown(page, "centreMm.forward")
  await dragByMouse(page, "mounts/front:atMm.forward", 30)
  await expect.poll(() => numberShown(page, "centreMm.forward")).toBeGreaterThan(forward)
  await undoTheOneStep(page)

  const unused = handle(page, `mounts/${UNUSED}:atMm.up`)
  await expect(unused).toHaveCount(0)
  await field(page, `mounts/${UNUSED}:atMm.up`).focus()
  await expect(front).toHaveCount(0)
  const value = await handleValue(unused)
  await press(page, `mounts/${UNUSED}:atMm.up`, "ArrowUp")
  await expect(field(page, `mounts/${UNUSED}:atMm.up`)).toHaveValue(String(value + 1))
  const from = await middle(unused)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  await page.mouse.move(from.x, from.y - 25)
  await page.mouse.up()
  await expect.poll(() => handleValue(unused)).toBeGreaterThan(value + 10)
})

test("a tap on a mount's bushing in the solid picture makes it one to drag, a tap beside the bow ends that", async ({
  page,
}) => {
  await open(page, "./?scene=compound-front-and-back-bar")
  const at = handle(page, `mounts/${UNUSED}:atMm.up`)
  await showSheet(page, "Bow")
  await page.locator("summary", { hasText: "Mounts" }).click()
  await field(page, `mounts/${UNUSED}:atMm.up`).focus()
  const place = await middle(at)
  const picture = page.locator(".view3d canvas")
  const box = (await picture.boundingBox())!
  await page.mouse.click(box.x + 30, box.y + 30)
  await expect(at).toHaveCount(0)
  await page.mouse.click(place.x, place.y)
  await expect(at).toHaveCount(1)
})
