import type { ScreenPoint } from "../picture/drag"
import type { Handle } from "../picture/handle"
import { valueAndEffect, valueText } from "../picture/handleText"
import type { Box, Projector } from "../picture/projector"
import type { BenchState } from "../state/bench"
import { elementsOf, type KnobElements, type Laid, sameLaid, tenth } from "./elements"
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
 * places; writes their values; puts the tooltip beside the handle in use; and tells the picture which room they take.
 * It runs on every frame of a drag, so it only writes, and only what changed. Knobs keep their distance from their places during a gesture, so that none jumps
 * while one is dragged.
 */
export function createArranger(layer: HTMLElement): Arranger {
  const coarse = matchMedia("(pointer: coarse)")
  let shifts = new Map<string, ScreenPoint>()
  let elements = elementsOf(layer)
  let tip = layer.querySelector<HTMLElement>(".handle-tip")
  let typing = layer.querySelector<HTMLElement>(".handle-typing")
  let wasNarrow = false
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
      if (narrow !== wasNarrow) layer.classList.toggle("handles-narrow", narrow)
      wasNarrow = narrow
      const places = placesOf(state, projector, !narrow)
      if (state.gesture === null || places.some(({ id }) => !shifts.has(id))) {
        shifts = shiftsOf(places, state, projector, coarse.matches ? SPACING.coarse : SPACING.fine, size)
      }
      const tipped = view.typing === null ? (view.dragged ?? view.hovered ?? view.byKey) : null
      const boxes: Box[] = []
      let shown = false
      for (const { id, handle, at, turn, foot } of places) {
        const found = elements.get(id)
        if (found === undefined) continue
        const { x, y } = shifts.get(id) ?? { x: 0, y: 0 }
        const shifted = { x: at.x + x, y: at.y + y }
        const point = id === view.focused ? inside(shifted, size) : shifted
        lay(found, point, at.visible, turn, foot)
        if (at.visible) boxes.push(around(point, found.half))
        if (handle === null) continue
        say(found, handle, state, id === view.focused || id === view.dragged)
        if (id === view.typing && typing !== null) beside({ element: typing, room: 110 }, point, size)
        if (id !== tipped || !at.visible || tip === null) continue
        shown = true
        showTip(tip, handle, point, size, state, view)
      }
      if (tip !== null && !shown) tip.hidden = true
      projector.occupy?.(boxes)
    },
  }
}

const inside = ({ x, y }: ScreenPoint, { width, height }: PictureSize): ScreenPoint => ({
  x: Math.min(width - MARGIN, Math.max(MARGIN, x)),
  y: Math.min(height - MARGIN, Math.max(MARGIN, y)),
})

const around = ({ x, y }: ScreenPoint, { width, height }: KnobElements["half"]): Box => ({
  left: x - width,
  top: y - height,
  right: x + width,
  bottom: y + height,
})

function lay(found: KnobElements, point: ScreenPoint, visible: boolean, turn: number | null, foot: ScreenPoint): void {
  const { x, y } = { x: tenth(point.x), y: tenth(point.y) }
  const laid: Laid = { visible, x, y, footX: tenth(foot.x), footY: tenth(foot.y), turn }
  const { laid: before, knob, leader } = found
  if (before !== null && sameLaid(before, laid)) return
  found.laid = laid
  if (visible !== before?.visible) knob.style.visibility = visible ? "visible" : "hidden"
  knob.style.transform = `translate(${x}px, ${y}px) translate(-50%, -50%)`
  if (turn !== null && turn !== before?.turn) knob.style.setProperty("--turn", `${turn}deg`)
  const near = !visible || Math.hypot(laid.footX - x, laid.footY - y) < NEAR
  leader.group.setAttribute("visibility", near ? "hidden" : "visible")
  if (near) return
  leader.line.setAttribute("x1", String(x))
  leader.line.setAttribute("y1", String(y))
  leader.line.setAttribute("x2", String(laid.footX))
  leader.line.setAttribute("y2", String(laid.footY))
  leader.dot.setAttribute("cx", String(laid.footX))
  leader.dot.setAttribute("cy", String(laid.footY))
}

/** The effect is said only where somebody listens: on the handle in use. */
function say(found: KnobElements, handle: Handle, state: BenchState, inUse: boolean): void {
  const { evaluation, preferences: units } = state
  const { said } = found
  const same = said !== null && said.value === handle.value && said.units === units && said.inUse === inUse
  // What a handle in use does depends on the whole bow, and how far it is drawn on its brace height and draw length.
  if (same && !inUse && handle.kind !== "draw") return
  found.said = { value: handle.value, units, inUse }
  found.knob.setAttribute("aria-valuenow", String(handle.value))
  found.knob.setAttribute(
    "aria-valuetext",
    inUse ? valueAndEffect(handle, evaluation, units) : valueText(handle, units),
  )
}
