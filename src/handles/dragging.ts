import { multiply } from "../core/solids"
import { startDrag } from "../picture/drag"
import { snap } from "../picture/handle"
import { paneOf } from "../picture/panes"
import type { Projector } from "../picture/projector"
import type { Bench } from "../state/bench"
import { type Adjustment, beginAdjustment } from "./adjustment"
import { handleNamed } from "./current"
import { handleAt, type LayerView } from "./view"

/** A press that moves less than this, px, is a tap: it takes the focus and changes nothing. */
const STILL = 3
/** A stack grows by one disc each time the pointer has gone this far, px, or one disc's picture where that is more. */
const PX_PER_DISC = 12
/** Elbow and nock go no faster than a step in so many px: a degree or a few millimetres turn a good balance into a bad one. */
const PX_PER_FINE_STEP = 2

/**
 * Dragging by mouse, pen and touch. Written on pointer events themselves: one press has one owner, its pointerId, and
 * however it ends (up, Escape, cancel, lost capture, window left) it goes through the same `end`. Presses stay in the
 * layer, so that the camera under it does not turn. While one pointer drags, others do nothing.
 */
export function listenForDrags(layer: HTMLElement, bench: Bench, projector: Projector, view: LayerView): () => void {
  interface Press {
    readonly pointer: number
    readonly element: HTMLElement
    readonly key: string
    /** The layer's when the press began: nothing moves it while a pointer is held. */
    readonly box: DOMRect
    readonly from: { readonly x: number; readonly y: number }
    follow: ((event: PointerEvent) => void) | null
    adjustment: Adjustment | null
  }
  let press: Press | null = null

  const inLayer = (event: PointerEvent, { left, top }: DOMRect) => ({ x: event.clientX - left, y: event.clientY - top })

  const begin = (held: Press) => {
    const state = bench.store.getState()
    const handle = handleNamed(state, held.key)
    if (handle === undefined) return
    const { rotation } = state.evaluation.now
    const { project } = paneOf(projector, handle.seen)
    const { min, max, step } = handle.field
    const place = (value: number) => multiply(rotation, handle.place(value))
    const least = handle.kind === "count" ? PX_PER_DISC : handle.lifts ? PX_PER_FINE_STEP : 0
    const valueAt = startDrag({ place, value: handle.value, min, max, step }, project, held.from, least)
    const adjustment = beginAdjustment(bench, handle)
    held.adjustment = adjustment
    held.follow = (event) => {
      if (!adjustment.live()) return end(true)
      const reason = adjustment.set(snap(handle, valueAt(inLayer(event, held.box)), bench.store.getState().preferences))
      view.refused = reason === null ? null : { key: held.key, reason }
    }
    view.dragged = held.key
  }

  const end = (keep: boolean) => {
    if (press === null) return
    const { adjustment, element, pointer } = press
    press = null
    view.dragged = null
    if (element.hasPointerCapture(pointer)) element.releasePointerCapture(pointer)
    window.removeEventListener("keydown", onEscape, true)
    if (keep) adjustment?.keep()
    else adjustment?.giveUp()
    view.refresh()
  }

  const onEscape = (event: KeyboardEvent) => {
    if (event.key !== "Escape") return
    event.preventDefault()
    event.stopPropagation()
    end(false)
  }

  const down = (event: PointerEvent) => {
    const at = handleAt(event)
    if (at === null) return
    event.stopPropagation()
    if (press !== null || event.button !== 0) return
    at.element.focus({ preventScroll: true })
    view.byKey = null
    at.element.setPointerCapture(event.pointerId)
    const box = layer.getBoundingClientRect()
    press = { ...at, pointer: event.pointerId, box, from: inLayer(event, box), follow: null, adjustment: null }
    view.refused = null
    window.addEventListener("keydown", onEscape, true)
    view.refresh()
  }

  const move = (event: PointerEvent) => {
    if (press === null || event.pointerId !== press.pointer) return
    event.stopPropagation()
    const { x, y } = inLayer(event, press.box)
    if (press.follow === null && Math.hypot(x - press.from.x, y - press.from.y) >= STILL) begin(press)
    press?.follow?.(event)
    view.refresh()
  }

  const finish = (event: PointerEvent) => {
    if (press === null || event.pointerId !== press.pointer) return
    event.stopPropagation()
    end(true)
  }
  const leave = () => end(true)

  layer.addEventListener("pointerdown", down)
  layer.addEventListener("pointermove", move)
  for (const name of ["pointerup", "pointercancel", "lostpointercapture"] as const) layer.addEventListener(name, finish)
  window.addEventListener("blur", leave)
  return () => {
    end(true)
    layer.removeEventListener("pointerdown", down)
    layer.removeEventListener("pointermove", move)
    for (const name of ["pointerup", "pointercancel", "lostpointercapture"] as const) {
      layer.removeEventListener(name, finish)
    }
    window.removeEventListener("blur", leave)
  }
}
