import type { ScreenPoint } from "../picture/drag"
import type { Handle } from "../picture/handle"
import { valueAndEffect, valueText } from "../picture/handleText"
import type { Projector } from "../picture/projector"
import type { BenchState } from "../state/bench"
import { attribute, elementsOf, type KnobElements, px, style } from "./elements"
import { placesOf, shiftsOf } from "./places"
import { beside, type PictureSize, showTip } from "./tip"
import type { LayerView } from "./view"

/** Knob centres stay this far apart, px, for a fine pointer and for fingers; the knobs' hit areas are this large. */
const SPACING = { fine: 25, coarse: 44 }
/** In a narrower picture, px, the extender switches are left to the parts table: knobs need the room. */
const SWITCHED_FROM = 480
/** A focused knob stays this far inside the picture, px, wherever its place is. */
const MARGIN = 16
/** A knob this near to its place needs no leader line, px. */
const NEAR = 4

export interface Arranger {
  /** To be called after React has made or taken away elements. */
  renew(): void
  resize(size: PictureSize): void
  arrange(state: BenchState, projector: Projector, view: LayerView): void
}

/**
 * Puts the knobs of a layer where their handles are in the picture, apart from each other, with leader lines to their
 * places; writes their values; and puts the tooltip beside the handle in use. It runs on every frame of a drag, so it
 * only writes, and only what changed. Knobs keep their distance from their places during a gesture, so that none jumps
 * while one is dragged.
 */
export function createArranger(layer: HTMLElement): Arranger {
  const coarse = matchMedia("(pointer: coarse)")
  let shifts = new Map<string, ScreenPoint>()
  let elements = elementsOf(layer)
  let tip = layer.querySelector<HTMLElement>(".handle-tip")
  let typing = layer.querySelector<HTMLElement>(".handle-typing")
  let size: PictureSize = { width: layer.clientWidth, height: layer.clientHeight }

  return {
    renew() {
      elements = elementsOf(layer)
      tip = layer.querySelector(".handle-tip")
      typing = layer.querySelector(".handle-typing")
    },
    resize(next) {
      size = next
    },
    arrange(state, projector, view) {
      const narrow = size.width < SWITCHED_FROM
      layer.classList.toggle("handles-narrow", narrow)
      const places = placesOf(state, projector, !narrow)
      if (state.gesture === null || places.some(({ id }) => !shifts.has(id))) {
        shifts = shiftsOf(places, state, projector, coarse.matches ? SPACING.coarse : SPACING.fine)
      }
      const tipped = view.typing === null ? (view.dragged ?? view.hovered ?? view.focused) : null
      let shown = false
      for (const { id, handle, at, turn, foot } of places) {
        const found = elements.get(id)
        if (found === undefined) continue
        const { x, y } = shifts.get(id) ?? { x: 0, y: 0 }
        const shifted = { x: at.x + x, y: at.y + y }
        const point = id === view.focused ? inside(shifted, size) : shifted
        style(found.knob, "visibility", at.visible ? "visible" : "hidden")
        style(found.knob, "transform", `translate(${px(point.x)}, ${px(point.y)}) translate(-50%, -50%)`)
        lead(found, at.visible ? point : foot, foot)
        if (turn !== null) found.knob.style.setProperty("--turn", `${turn}deg`)
        if (handle === null) continue
        say(found.knob, handle, state, id === view.focused || id === view.dragged)
        if (id === view.typing && typing !== null) beside({ element: typing, room: 110 }, point, size)
        if (id !== tipped || !at.visible || tip === null) continue
        shown = true
        showTip(tip, handle, point, size, state, view)
      }
      if (tip !== null && !shown) tip.hidden = true
    },
  }
}

const inside = ({ x, y }: ScreenPoint, { width, height }: PictureSize): ScreenPoint => ({
  x: Math.min(width - MARGIN, Math.max(MARGIN, x)),
  y: Math.min(height - MARGIN, Math.max(MARGIN, y)),
})

function lead({ leader: { group, line, dot } }: KnobElements, from: ScreenPoint, to: ScreenPoint): void {
  const near = Math.hypot(from.x - to.x, from.y - to.y) < NEAR
  attribute(group, "visibility", near ? "hidden" : "visible")
  if (near) return
  attribute(line, "x1", from.x.toFixed(1))
  attribute(line, "y1", from.y.toFixed(1))
  attribute(line, "x2", to.x.toFixed(1))
  attribute(line, "y2", to.y.toFixed(1))
  attribute(dot, "cx", to.x.toFixed(1))
  attribute(dot, "cy", to.y.toFixed(1))
}

/** The effect on the balance point is said only where somebody listens: on the handle in use. */
function say(knob: HTMLElement, handle: Handle, state: BenchState, inUse: boolean): void {
  const units = state.preferences
  const forward = state.evaluation.now.centre[0] * 1e3
  attribute(knob, "aria-valuenow", String(handle.value))
  attribute(knob, "aria-valuetext", inUse ? valueAndEffect(handle, forward, units) : valueText(handle, units))
}
