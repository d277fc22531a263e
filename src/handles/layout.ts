import { multiply } from "../core/solids"
import { spreadApart } from "../picture/apart"
import type { ScreenPoint } from "../picture/drag"
import type { Handle } from "../picture/handle"
import { tipText, valueAndEffect, valueText } from "../picture/handleText"
import { paneOf } from "../picture/panes"
import type { Projector } from "../picture/projector"
import type { BenchState } from "../state/bench"
import { holds } from "./current"
import type { LayerView } from "./view"

/** Knob centres stay this far apart, px, for a fine pointer and for fingers; the knobs' hit areas are this large. */
const SPACING = { fine: 25, coarse: 44 }
/** In a narrower picture, px, the extender switches are left to the parts table: knobs need the room. */
const SWITCHED_FROM = 480
/** A focused knob stays this far inside the picture, px, wherever its place is. */
const MARGIN = 16
/** A knob this near to its place needs no leader line, px. */
const NEAR = 4

/** Remembers the elements of a layer and how far each knob was moved. */
export interface Arranger {
  arrange(state: BenchState, projector: Projector, view: LayerView): void
}

/**
 * Puts the knobs of a layer where their handles are in the picture, apart from each other, with leader lines to their
 * places; writes their values; and puts the tooltip beside the handle in use. Plain style and attribute writes, only
 * where something changed: it runs on every frame of a drag. Knobs keep their distance from their places during a
 * gesture, so that none jumps while one is dragged.
 */
export function createArranger(layer: HTMLElement): Arranger {
  let shifts = new Map<string, ScreenPoint>()
  const coarse = matchMedia("(pointer: coarse)")

  return {
    arrange(state, projector, view) {
      const { rotation } = state.evaluation.now
      const { handles, switches } = holds(state)
      const size = { width: layer.clientWidth, height: layer.clientHeight }
      const seen = [
        ...handles.map((handle) => {
          const { project } = paneOf(projector, handle.seen)
          const at = (value: number) => project(multiply(rotation, handle.place(value)))
          const hub = handle.hub && project(multiply(rotation, handle.hub))
          return { id: handle.key, handle, at: at(handle.value), next: at(handle.value + handle.field.step), hub }
        }),
        ...(size.width < SWITCHED_FROM ? [] : switches).map(({ path, place, seen: pane }) => {
          const at = paneOf(projector, pane).project(multiply(rotation, place))
          return { id: `extender ${path}`, handle: null, at, next: at, hub: null }
        }),
      ]
      if (state.gesture === null || seen.some(({ id }) => !shifts.has(id))) {
        const shown = seen.filter(({ at }) => at.visible)
        // Knobs give way to the balance point as well.
        const balance = paneOf(projector, "side").project(multiply(rotation, state.evaluation.now.centre))
        const spacing = coarse.matches ? SPACING.coarse : SPACING.fine
        const spread = spreadApart([balance, ...shown.map(({ at }) => at)], spacing)
        shifts = new Map(shown.map(({ id }, index) => [id, spread[index + 1]!]))
      }
      layer.classList.toggle("handles-narrow", size.width < SWITCHED_FROM)
      const tip = view.dragged ?? view.hovered ?? view.focused
      let tipped = false
      for (const { id, handle, at, next, hub } of seen) {
        const knob = layer.querySelector<HTMLElement>(`[data-knob="${CSS.escape(id)}"]`)
        if (knob === null) continue
        const shift = shifts.get(id) ?? { x: 0, y: 0 }
        let point = { x: at.x + shift.x, y: at.y + shift.y }
        if (id === view.focused) point = inside(point, size)
        set(knob, "visibility", at.visible ? "visible" : "hidden")
        set(knob, "transform", `translate(${px(point.x)}, ${px(point.y)}) translate(-50%, -50%)`)
        const to = hub ?? at
        leader(layer, id, at.visible ? point : to, to)
        if (handle === null) continue
        if (handle.kind !== "place" && (next.x !== at.x || next.y !== at.y)) {
          knob.style.setProperty(
            "--turn",
            `${Math.round((Math.atan2(next.y - at.y, next.x - at.x) * 180) / Math.PI)}deg`,
          )
        }
        values(knob, handle, state, id === view.focused || id === view.dragged)
        if (id === tip && at.visible) {
          tipped = true
          showTip(layer, handle, point, size, state, view)
        }
        if (layer.dataset.typing === id) typingAt(layer, point, size)
      }
      const box = layer.querySelector<HTMLElement>(".handle-tip")
      if (box !== null && !tipped) box.hidden = true
    },
  }
}

const px = (value: number): string => `${value.toFixed(1)}px`

function set(element: HTMLElement, name: "visibility" | "transform", value: string): void {
  if (element.style[name] !== value) element.style[name] = value
}

function attribute(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value)
}

const inside = ({ x, y }: ScreenPoint, { width, height }: { width: number; height: number }): ScreenPoint => ({
  x: Math.min(width - MARGIN, Math.max(MARGIN, x)),
  y: Math.min(height - MARGIN, Math.max(MARGIN, y)),
})

function leader(layer: HTMLElement, id: string, from: ScreenPoint, to: ScreenPoint): void {
  const line = layer.querySelector<SVGGElement>(`[data-leader="${CSS.escape(id)}"]`)
  if (line === null) return
  const near = Math.hypot(from.x - to.x, from.y - to.y) < NEAR
  attribute(line, "visibility", near ? "hidden" : "visible")
  if (near) return
  const [stroke, foot] = line.children
  if (stroke === undefined || foot === undefined) return
  attribute(stroke, "x1", from.x.toFixed(1))
  attribute(stroke, "y1", from.y.toFixed(1))
  attribute(stroke, "x2", to.x.toFixed(1))
  attribute(stroke, "y2", to.y.toFixed(1))
  attribute(foot, "cx", to.x.toFixed(1))
  attribute(foot, "cy", to.y.toFixed(1))
}

/** The effect on the balance point is said only where somebody listens: on the handle in use. */
function values(knob: HTMLElement, handle: Handle, state: BenchState, inUse: boolean): void {
  const units = state.preferences
  const forward = state.evaluation.now.centre[0] * 1e3
  attribute(knob, "aria-valuenow", String(handle.value))
  attribute(knob, "aria-valuetext", inUse ? valueAndEffect(handle, forward, units) : valueText(handle, units))
}

function showTip(
  layer: HTMLElement,
  handle: Handle,
  point: ScreenPoint,
  size: { width: number; height: number },
  { preferences }: BenchState,
  { refused }: LayerView,
): void {
  const tip = layer.querySelector<HTMLElement>(".handle-tip")
  if (tip === null) return
  const [name, value, reason] = tip.children as unknown as [HTMLElement, HTMLElement, HTMLElement]
  tip.hidden = false
  name.textContent = handle.label
  value.textContent = tipText(handle, preferences.pairArms, preferences)
  reason.textContent = refused?.key === handle.key ? refused.reason : ""
  beside(tip, point, size)
}

const typingAt = (layer: HTMLElement, point: ScreenPoint, size: { width: number; height: number }): void => {
  const box = layer.querySelector<HTMLElement>(".handle-typing")
  if (box !== null) beside(box, point, size)
}

/** Above a point where there is room, else below it, and inside the picture. */
function beside(box: HTMLElement, point: ScreenPoint, size: { width: number; height: number }): void {
  const [width, height] = [box.offsetWidth, box.offsetHeight]
  const gap = 20
  const left = Math.min(size.width - width - 4, Math.max(4, point.x - width / 2))
  const above = point.y - gap - height
  const top = above >= 4 ? above : point.y + gap
  set(box, "transform", `translate(${px(left)}, ${px(top)})`)
}
