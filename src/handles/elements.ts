/** The elements of one handle or switch. */
export interface KnobElements {
  readonly knob: HTMLElement
  /** A line from the knob to its place, with a dot there. */
  readonly leader: { readonly group: Element; readonly line: Element; readonly dot: Element }
}

/** The elements of a layer by the id of their handle or switch, looked up once after React has made them. */
export function elementsOf(layer: HTMLElement): ReadonlyMap<string, KnobElements> {
  const leaders = new Map(
    [...layer.querySelectorAll<SVGElement>("[data-leader]")].map((group) => [group.dataset.leader, group]),
  )
  const found = new Map<string, KnobElements>()
  for (const knob of layer.querySelectorAll<HTMLElement>("[data-knob]")) {
    const id = knob.dataset.knob ?? ""
    const group = leaders.get(id)
    const [line, dot] = group?.children ?? []
    if (group !== undefined && line !== undefined && dot !== undefined)
      found.set(id, { knob, leader: { group, line, dot } })
  }
  return found
}

export const px = (value: number): string => `${value.toFixed(1)}px`

/** Writes a style only where it changes something. */
export function style(element: HTMLElement, name: "visibility" | "transform", value: string): void {
  if (element.style[name] !== value) element.style[name] = value
}

/** Writes an attribute only where it changes something. */
export function attribute(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value)
}
