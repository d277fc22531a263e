import type { CDPSession, Locator, Page } from "@playwright/test"
import { handle } from "./page"
import { openFlat as openSceneFlat } from "./panelsPage"

/** Opens a scene with many handles with the flat drawing. */
export const openFlat = (page: Page, scene = "target-recurve-drooped-bar"): Promise<void> => openSceneFlat(page, scene)

/**
 * The middle of a knob on the page, px, once it is the same in two frames: a picture that has just changed places its
 * knobs with the next one, and a press where one was misses it.
 */
export async function middle(at: Locator): Promise<{ x: number; y: number }> {
  return at.evaluate(async (knob) => {
    const frame = () => new Promise((drawn) => requestAnimationFrame(drawn))
    const place = () => {
      if (knob.getClientRects().length === 0) throw new Error("the handle has no place in the picture")
      const { x, y, width, height } = knob.getBoundingClientRect()
      return { x: x + width / 2, y: y + height / 2 }
    }
    for (let last = place(); ; ) {
      await frame()
      const now = place()
      if (now.x === last.x && now.y === last.y) return now
      last = now
    }
  })
}

/** A way on the page, px, along which the handle's value grows: the knob's face is turned to it. */
export async function wayOf(page: Page, key: string, length: number): Promise<{ x: number; y: number }> {
  const at = handle(page, key)
  const turn = await at.evaluate((element) => element.style.getPropertyValue("--turn"))
  const angle = ((turn === "" ? (key.endsWith(".up") ? -90 : 0) : Number.parseFloat(turn)) * Math.PI) / 180
  return { x: Math.cos(angle) * length, y: Math.sin(angle) * length }
}

/** Presses a knob and pulls it so far along its way, px, in three moves. */
export async function dragByMouse(page: Page, key: string, length: number, drop = true): Promise<void> {
  const from = await middle(handle(page, key))
  const by = await wayOf(page, key, length)
  await page.mouse.move(from.x, from.y)
  await page.mouse.down()
  for (const part of [0.3, 0.7, 1]) await page.mouse.move(from.x + by.x * part, from.y + by.y * part)
  if (drop) await page.mouse.up()
}

/** Fingers on the page, px; several at once. */
export const touch = (session: CDPSession, type: string, points: readonly { x: number; y: number }[]) =>
  session.send("Input.dispatchTouchEvent", {
    type: type as "touchStart",
    touchPoints: points.map((point, id) => ({ ...point, id })),
  })
