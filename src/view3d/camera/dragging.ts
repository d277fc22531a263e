import { metresPerPixel, neared, shifted, turned } from "./moves"
import type { View } from "./view"

interface Camera {
  view(): View
  /** The person moved the camera. */
  moved(view: View): void
}

interface Place {
  readonly x: number
  readonly y: number
}

/** A press that stays within this is a press on something, not a drag, px. */
const STILL = 3
/** A drag over the whole height of the picture turns the bow this far, rad. */
const TURN = Math.PI
/** How much nearer one px of wheel brings; a usual notch is 100 px. */
const WHEEL = 0.0015
/** Wheels that count in lines or pages, px each. */
const WHEEL_UNIT = [1, 16, 400]

/**
 * Turning by a drag, moving by a drag with the other button or a modifier key or with two fingers, zooming by wheel and
 * by two fingers. Every pointer has its own state; its release, cancelling and lost capture end it alike. Returns what ends all.
 */
export function dragCamera(canvas: HTMLElement, camera: Camera): () => void {
  const pointers = new Map<number, Place>()
  let moving = false
  let begun: Place | null = null

  const height = () => canvas.clientHeight
  const place = (event: MouseEvent): Place => {
    const box = canvas.getBoundingClientRect()
    return { x: event.clientX - box.left, y: event.clientY - box.top }
  }
  /** m right and up from the picture's middle, at the target's depth. */
  const fromMiddle = ({ x, y }: Place): [number, number] => {
    const scale = metresPerPixel(camera.view(), height())
    return [(x - canvas.clientWidth / 2) * scale, (height() / 2 - y) * scale]
  }
  const pan = (view: View, dx: number, dy: number): View => {
    const scale = metresPerPixel(view, height())
    return shifted(view, -dx * scale, dy * scale)
  }

  const down = (event: PointerEvent) => {
    if (pointers.size >= 2) return
    const at = place(event)
    pointers.set(event.pointerId, at)
    canvas.setPointerCapture(event.pointerId)
    moving = event.button !== 0 || event.shiftKey || event.ctrlKey || event.metaKey
    begun = pointers.size === 1 ? at : null
  }
  const move = (event: PointerEvent) => {
    const from = pointers.get(event.pointerId)
    if (from === undefined) return
    const to = place(event)
    if (begun !== null && Math.hypot(to.x - begun.x, to.y - begun.y) <= STILL) return
    begun = null
    pointers.set(event.pointerId, to)
    const [dx, dy] = [to.x - from.x, to.y - from.y]
    const other = [...pointers].find(([id]) => id !== event.pointerId)?.[1]
    if (other !== undefined) camera.moved(pinched(from, to, other))
    else if (moving) camera.moved(pan(camera.view(), dx, dy))
    else camera.moved(turned(camera.view(), (-dx / height()) * TURN, (dy / height()) * TURN))
  }
  /** Two fingers: what lies between them moves and grows with them. */
  const pinched = (from: Place, to: Place, other: Place): View => {
    const apart = (a: Place) => Math.max(1, Math.hypot(a.x - other.x, a.y - other.y))
    const middle = { x: (to.x + other.x) / 2, y: (to.y + other.y) / 2 }
    const panned = pan(camera.view(), (to.x - from.x) / 2, (to.y - from.y) / 2)
    return neared(panned, apart(from) / apart(to), ...fromMiddle(middle))
  }
  const ended = (event: PointerEvent) => {
    pointers.delete(event.pointerId)
    begun = null
  }
  const wheel = (event: WheelEvent) => {
    event.preventDefault()
    const turn = event.deltaY * (WHEEL_UNIT[event.deltaMode] ?? 1)
    camera.moved(neared(camera.view(), Math.exp(turn * WHEEL), ...fromMiddle(place(event))))
  }
  const menu = (event: Event) => event.preventDefault()

  const listeners: readonly [string, (event: never) => void][] = [
    ["pointerdown", down],
    ["pointermove", move],
    ["pointerup", ended],
    ["pointercancel", ended],
    ["lostpointercapture", ended],
    ["wheel", wheel],
    ["contextmenu", menu],
  ]
  for (const [name, listener] of listeners) canvas.addEventListener(name, listener as EventListener, { passive: false })
  return () => {
    for (const [name, listener] of listeners) canvas.removeEventListener(name, listener as EventListener)
  }
}
