interface Pointing {
  /** Path of the part at (x, y) CSS px in the canvas, looking `reach` px around. */
  under(x: number, y: number, reach: number): string | null
  hovered(path: string | null): void
  tapped(path: string | null): void
}

/** How far around the pointer a thin part is still found, px: a fingertip is wider than an arrow's tip. */
const REACH = { fine: 5, coarse: 14 }
/** A press that moved further than this, px, turned the camera and selects nothing. */
const STILL = 5

/**
 * Pointing at parts: a moving mouse or pen hovers, looked up at most once a frame; a press and release in one place selects.
 * Returns what ends it.
 */
export function pointAt(canvas: HTMLElement, { under, hovered, tapped }: Pointing): () => void {
  let request = 0
  let last: { x: number; y: number } | null = null
  let pressed: { id: number; x: number; y: number } | null = null
  let several = false

  const place = (event: PointerEvent) => {
    const box = canvas.getBoundingClientRect()
    return { x: event.clientX - box.left, y: event.clientY - box.top }
  }
  const reach = (event: PointerEvent) => (event.pointerType === "touch" ? REACH.coarse : REACH.fine)
  const show = (path: string | null) => {
    canvas.parentElement?.toggleAttribute("data-pointing", path !== null)
    hovered(path)
  }

  const moved = (event: PointerEvent) => {
    if (event.pointerType === "touch" || event.buttons !== 0) return
    last = place(event)
    if (request !== 0) return
    request = requestAnimationFrame(() => {
      request = 0
      if (last !== null) show(under(last.x, last.y, REACH.fine))
    })
  }
  const left = () => {
    last = null
    show(null)
  }
  const down = (event: PointerEvent) => {
    several = pressed !== null
    pressed = event.button === 0 ? { id: event.pointerId, ...place(event) } : null
  }
  const up = (event: PointerEvent) => {
    const from = pressed
    if (from === null || from.id !== event.pointerId) return
    pressed = null
    const { x, y } = place(event)
    if (!several && Math.hypot(x - from.x, y - from.y) <= STILL) tapped(under(x, y, reach(event)))
  }
  const ended = () => {
    pressed = null
  }

  const listeners = { pointermove: moved, pointerleave: left, pointerdown: down, pointerup: up, pointercancel: ended }
  for (const [name, listener] of Object.entries(listeners)) canvas.addEventListener(name, listener as EventListener)
  return () => {
    cancelAnimationFrame(request)
    for (const [name, listener] of Object.entries(listeners))
      canvas.removeEventListener(name, listener as EventListener)
  }
}
