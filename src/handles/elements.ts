import type { UnitChoice } from "../describe/format"

/** The elements of one handle or switch. */
export interface KnobElements {
  readonly knob: HTMLElement
  /** Half its edges, px. */
  readonly half: { readonly width: number; readonly height: number }
  /** A line from the knob to its place, with a dot there. */
  readonly leader: { readonly group: Element; readonly line: Element; readonly dot: Element }
  /** What was written last; nothing is read back from the page, which would cost as much as writing it. */
  laid: Laid | null
  said: Said | null
}

/** Where a knob stands, px to a tenth, and where its leader line goes. */
export interface Laid {
  readonly visible: boolean
  readonly x: number
  readonly y: number
  readonly footX: number
  readonly footY: number
  readonly turn: number | null
}

export const sameLaid = (a: Laid, b: Laid): boolean =>
  a.x === b.x &&
  a.y === b.y &&
  a.footX === b.footX &&
  a.footY === b.footY &&
  a.visible === b.visible &&
  a.turn === b.turn

/** What a knob says, and of what: the same again need not be put into words. */
export interface Said {
  readonly value: number
  readonly units: UnitChoice
  readonly inUse: boolean
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
    if (group === undefined || line === undefined || dot === undefined) continue
    const half = { width: knob.offsetWidth / 2, height: knob.offsetHeight / 2 }
    found.set(id, { knob, half, leader: { group, line, dot }, laid: null, said: null })
  }
  return found
}

export const tenth = (value: number): number => Math.round(value * 10) / 10
export const px = (value: number): string => `${value.toFixed(1)}px`

/** Writes a style only where it changes something. */
export function style(element: HTMLElement, name: "visibility" | "transform", value: string): void {
  if (element.style[name] !== value) element.style[name] = value
}
