import type { ScreenPoint } from "../picture/drag"
import type { Handle } from "../picture/handle"
import { tipEffect, tipText } from "../picture/handleText"
import type { BenchState } from "../state/bench"
import { px, style } from "./elements"
import type { LayerView } from "./view"

export interface PictureSize {
  readonly width: number
  readonly height: number
}

/** The tooltip or the typed-value field, shown beside a handle. */
export interface Beside {
  readonly element: HTMLElement
  /** Above the point from here down, px. */
  readonly room: number
}

/** The widest they are, px; the same as in the style sheet. */
const WIDEST = 280
const GAP = 20

/**
 * Above a point where there is room, else below it; centred, or to the side that keeps it inside the picture. Done with
 * percentages of its own size, so that the page need not be laid out to know it.
 */
export function beside({ element, room }: Beside, point: ScreenPoint, size: PictureSize): void {
  const across = point.x < WIDEST / 2 ? "-20px" : point.x > size.width - WIDEST / 2 ? "calc(-100% + 20px)" : "-50%"
  const above = point.y > room + GAP
  const to = { x: Math.max(24, Math.min(size.width - 24, point.x)), y: point.y + (above ? -GAP : GAP) }
  style(element, "transform", `translate(${px(to.x)}, ${px(to.y)}) translate(${across}, ${above ? "-100%" : "0"})`)
}

/** Name and value of the handle in use, what it does, and why it goes no further. */
export function showTip(
  tip: HTMLElement,
  handle: Handle,
  point: ScreenPoint,
  size: PictureSize,
  { evaluation, gesture, preferences }: BenchState,
  { refused }: LayerView,
): void {
  const [name, value, effect, reason] = tip.children
  if (name === undefined || value === undefined || effect === undefined || reason === undefined) return
  if (tip.hidden) tip.hidden = false
  write(name, handle.label)
  write(value, tipText(handle, preferences.pairArms, preferences))
  write(effect, tipEffect(handle, evaluation, gesture?.baseEvaluation ?? null, preferences))
  write(reason, refused?.key === handle.key ? refused.reason : "")
  beside({ element: tip, room: 84 }, point, size)
}

function write(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text
}
