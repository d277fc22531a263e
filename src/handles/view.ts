/** What the parts of the handle layer tell each other; never scene data. */
export interface LayerView {
  /** The handle being dragged. */
  dragged: string | null
  /** Under a resting mouse. */
  hovered: string | null
  focused: string | null
  /** The focused one, while it is the keyboard that is used: after a finger has gone, its words would stay in the way. */
  byKey: string | null
  /** Its value is being typed. */
  typing: string | null
  /** The last value that was not taken, until the next try. */
  refused: { readonly key: string; readonly reason: string } | null
  /** Asks for the layer to be laid out again before the next picture. */
  readonly refresh: () => void
}

/** The handle an event happened on: its element and key. */
export function handleAt(event: Event): { element: HTMLElement; key: string } | null {
  const element = event.target instanceof Element ? event.target.closest<HTMLElement>("[data-handle]") : null
  const key = element?.dataset.handle
  return element && key !== undefined ? { element, key } : null
}
