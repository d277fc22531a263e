import type { Vec3 } from "../core/solids"
import type { ScreenPoint } from "../picture/drag"
import type { Pane } from "../picture/handle"
import { type Box, overlap } from "./labels"

/** A place in a drawing, m: to the right on the page, and toward its top. */
export type FlatPoint = readonly [across: number, up: number]

/** The space that something takes in a drawing, m. */
export interface Extent {
  readonly across: readonly [number, number]
  readonly up: readonly [number, number]
}

/** What a drawing must show: enough points of it that none of its lines passes between them unseen. */
export interface Contents {
  readonly points: readonly FlatPoint[]
  readonly extent: Extent
}

/** Where one drawing's origin, the grip, is on the page, px, and how large a metre is. */
export interface Frame {
  readonly x: number
  readonly y: number
  readonly scale: number
}

export type Frames = Readonly<Record<Pane, Frame>>

export interface Size {
  readonly width: number
  readonly height: number
}

/** The page: its size, what lies over it, and what the drawings keep free of, px. */
export interface Page extends Size {
  /** Figures in the top right corner. */
  readonly corner: Size
  /** Buttons and the ground's marks along the bottom. */
  readonly bottom: number
  /** Right of this, px, nothing lies along the bottom; without it something does everywhere. */
  readonly foot?: number
  /** Free space around each drawing: for labels, and half a knob. */
  readonly edge: number
  /** Room for the moment arm's number, to the right of the grip and under it. */
  readonly arm: Size
}

/** No drawing is larger than this, px/m: about what a screen's own millimetres are. */
const LARGEST = 1500
const SMALLEST = 20
/** Halvings of the range of scales: to about a pixel a metre. */
const TURNS = 11

/** World axes, m, to the page's: from the archer's right with the target to the right, and from above the same way. */
export const flatten: Readonly<Record<Pane, (world: Vec3) => FlatPoint>> = {
  side: ([x, y]) => [x, y],
  top: ([x, , z]) => [x, 0 - z],
}

export const onPage = ({ x, y, scale }: Frame, [across, up]: FlatPoint): ScreenPoint => ({
  x: x + across * scale,
  y: y - up * scale,
})

/** The box of a drawing on the page, with `margin` px around it. */
export function boxOf(frame: Frame, { across, up }: Extent, margin: number): Box {
  const [low, high] = [onPage(frame, [across[0], up[0]]), onPage(frame, [across[1], up[1]])]
  return { left: low.x - margin, right: high.x + margin, top: high.y - margin, bottom: low.y + margin }
}

type Layout = (page: Page, side: Extent, top: Extent, scale: number) => Frames

/**
 * Both drawings to one scale, as large as they can be without meeting each other, the page's edges or its corner: the one
 * from above goes under the front rod, to the right of the side drawing, or below it with the grips in line. Where even
 * the smallest scale does not fit, the drawings are cut off.
 */
export function arrangeFrames(page: Page, side: Contents, top: Contents): Frames {
  const candidates = [underRod, toTheRight, below].map((layout) => largest(layout, page, side, top))
  return candidates.reduce((best, next) => (next.side.scale > best.side.scale * 1.02 ? next : best))
}

function largest(layout: Layout, page: Page, side: Contents, top: Contents): Frames {
  let [low, high] = [SMALLEST, LARGEST]
  for (let turn = 0; turn < TURNS; turn++) {
    const scale = (low + high) / 2
    if (fits(layout(page, side.extent, top.extent, scale), page, side, top, page.edge)) low = scale
    else high = scale
  }
  return layout(page, side.extent, top.extent, low)
}

/** Whether the drawings stand clear of everything by `edge` px. */
export function fits(frames: Frames, page: Page, side: Contents, top: Contents, edge: number): boolean {
  const corner: Box = { left: page.width - page.corner.width, right: page.width, top: 0, bottom: page.corner.height }
  const above = boxOf(frames.top, top.extent, edge)
  const arm: Box = {
    left: frames.side.x,
    right: frames.side.x + page.arm.width,
    top: frames.side.y,
    bottom: frames.side.y + page.arm.height,
  }
  if (overlap(above, arm) || overlap(above, corner) || !inPage(above, page)) return false
  return side.points.every((point) => {
    const { x, y } = onPage(frames.side, point)
    const here: Box = { left: x - edge / 2, right: x + edge / 2, top: y - edge / 2, bottom: y + edge / 2 }
    return inPage({ ...here, left: x - edge, right: x + edge }, page) && !overlap(here, corner) && !overlap(here, above)
  })
}

/** The buttons are in the left corner: what lies right of them goes down to the edge. */
const inPage = ({ left, right, top, bottom }: Box, page: Page): boolean =>
  left >= 0 && right <= page.width && top >= 0 && bottom <= footOf(page, left) + page.edge / 2

const footOf = (page: Page, left: number): number =>
  left >= (page.foot ?? page.width) ? page.height - page.edge / 2 : page.height - page.bottom

const wide = ({ across }: Extent): number => across[1] - across[0]
const tall = ({ up }: Extent): number => up[1] - up[0]

/** A frame with its drawing's left edge and vertical middle at these places on the page. */
const placed = (extent: Extent, scale: number, left: number, middle: number): Frame => ({
  scale,
  x: left - extent.across[0] * scale,
  y: middle + (scale * (extent.up[0] + extent.up[1])) / 2,
})

/** A bow without its rig reaches this far forward, m. */
const BOW_FRONT = 0.09

const underRod: Layout = (page, side, top, scale) => {
  const floor = page.height - page.bottom
  const bow = (BOW_FRONT - side.across[0]) * scale
  const width = Math.max(wide(side) * scale, bow + 2 * page.edge + wide(top) * scale)
  const left = Math.max(page.edge, (page.width - width) / 2)
  const right = Math.min(page.width - page.edge, left + width)
  return {
    side: placed(side, scale, left, (page.edge + floor) / 2),
    top: placed(top, scale, right - wide(top) * scale, floor - page.edge - (tall(top) * scale) / 2),
  }
}

const toTheRight: Layout = (page, side, top, scale) => {
  const floor = page.height - page.bottom
  const spare = Math.max(0, page.width - 3 * page.edge - (wide(side) + wide(top)) * scale) / 3
  const from = Math.max(page.corner.height, page.edge)
  const left = page.width - page.edge - spare - wide(top) * scale
  return {
    side: placed(side, scale, page.edge + spare, (page.edge + floor) / 2),
    top: placed(top, scale, left, (from + footOf(page, left - page.edge)) / 2),
  }
}

const below: Layout = (page, side, top, scale) => {
  const floor = page.height - page.bottom
  const from = Math.min(side.across[0], top.across[0])
  const to = Math.max(side.across[1], top.across[1])
  const spare = Math.max(0, floor - 3 * page.edge - (tall(side) + tall(top)) * scale) / 3
  const x = (page.width - (to - from) * scale) / 2 - from * scale
  return {
    side: { scale, x, y: page.edge + spare + side.up[1] * scale },
    top: { scale, x, y: floor - page.edge - spare + top.up[0] * scale },
  }
}

/** A frame is kept until its drawing would come too near to something or could be this much larger. */
const GROW = 1.22

/** Whether to go on with the frames there are, so that the picture does not swell and shrink at every change. */
export const stillGood = (now: Frames, best: Frames, page: Page, side: Contents, top: Contents): boolean =>
  best.side.scale <= now.side.scale * GROW && fits(now, page, side, top, page.edge / 3)
