import type uPlot from "uplot"
import type { PlotContent, PlotLine, PlotMark } from "./plotted"

const FONT_PX = 12
/** Between two names at line ends, CSS pixels. */
const NAME_STEP = 15
/** Between a line's end and its name, and between the name and the edge, CSS pixels. */
const BEFORE_NAME = 6
const BEHIND_NAME = 4
/** The last number under the axis stands half beyond it: room that is always left, CSS pixels. */
const LEAST_ROOM = 14

/** A colour of the present theme, as the page has it now. */
export const themeColour = (name: string): string =>
  getComputedStyle(document.documentElement).getPropertyValue(name).trim() || "#888"

/** The letters of all plots, drawn at so many device pixels a CSS pixel. */
export const plotFont = (scale: number): string =>
  `${FONT_PX * scale}px ${getComputedStyle(document.documentElement).fontFamily}`

/** Room right of a plot for the names at its lines' ends, CSS pixels: as wide as the widest name in any language. */
export function nameRoom(lines: readonly Pick<PlotLine, "name">[]): number {
  const ctx = document.createElement("canvas").getContext("2d")
  if (ctx === null) return LEAST_ROOM
  ctx.font = plotFont(1)
  const widest = Math.max(0, ...lines.map(({ name }) => ctx.measureText(name).width))
  return widest === 0 ? LEAST_ROOM : Math.max(LEAST_ROOM, Math.ceil(BEFORE_NAME + widest + BEHIND_NAME))
}

/** Names at the ends of the lines, and the marks, on top of the drawn plot. */
export function drawNotes(plot: uPlot, content: PlotContent): void {
  const { ctx } = plot
  const scale = devicePixelRatio
  ctx.save()
  ctx.font = plotFont(scale)
  for (const mark of content.marks) drawMark(plot, mark, scale)
  nameLines(plot, content, scale)
  ctx.restore()
}

function drawMark(plot: uPlot, mark: PlotMark, scale: number): void {
  const { ctx, bbox } = plot
  const right = bbox.left + bbox.width
  const bottom = bbox.top + bbox.height
  const x = plot.valToPos(mark.x, "x", true)
  if (!(x >= bbox.left - 1 && x <= right + 1)) return
  const y = mark.y === undefined ? bbox.top : plot.valToPos(mark.y, "y", true)
  ctx.strokeStyle = ctx.fillStyle = themeColour("--ink")
  ctx.lineWidth = scale
  ctx.setLineDash([2 * scale, 3 * scale])
  ctx.beginPath()
  if (mark.kind !== "point") {
    ctx.moveTo(x, bottom)
    ctx.lineTo(x, y)
  }
  if (mark.kind === "corner") ctx.lineTo(bbox.left, y)
  ctx.stroke()
  ctx.setLineDash([])
  if (mark.kind !== "upright") dot(ctx, x, y, (mark.kind === "point" ? 6 : 4) * scale, mark.kind === "point")
  if (mark.text === "") return
  const width = ctx.measureText(mark.text).width
  const gap = 8 * scale
  const under = mark.kind === "point" || mark.below === true
  ctx.textBaseline = under ? "top" : "bottom"
  const lineHeight = FONT_PX * scale
  const wanted = mark.kind === "upright" ? bbox.top + lineHeight : under ? y + gap / 2 : y - gap / 2
  // A word at the foot of the plot stays inside, off the axis, and off the line that rises from there.
  const lowest = under ? bottom - lineHeight : bottom
  const beside = wanted > lowest ? gap + lineHeight : gap
  const toLeft = x + beside + width > right
  ctx.textAlign = toLeft ? "right" : "left"
  ctx.fillText(mark.text, toLeft ? x - beside : x + beside, Math.min(lowest, Math.max(bbox.top + lineHeight, wanted)))
}

function dot(ctx: CanvasRenderingContext2D, x: number, y: number, radius: number, filled: boolean): void {
  ctx.beginPath()
  ctx.arc(x, y, radius, 0, 2 * Math.PI)
  ctx.save()
  ctx.fillStyle = themeColour(filled ? "--ink" : "--panel")
  ctx.fill()
  ctx.restore()
  ctx.stroke()
}

/** Each name beside its line's last point, moved apart where they would lie on each other. */
function nameLines(plot: uPlot, { x, lines }: PlotContent, scale: number): void {
  const { ctx, bbox } = plot
  const ends = lines.flatMap(({ name, values, ink }) => {
    let last = Math.min(values.length, x.length) - 1
    while (last >= 0 && values[last] === null) last--
    if (name === "" || last < 0) return []
    return [
      { name, ink, left: plot.valToPos(x[last]!, "x", true), top: plot.valToPos(values[last]!, "y", true), at: 0 },
    ]
  })
  ends.sort((a, b) => a.top - b.top)
  let free = bbox.top
  for (const end of ends) {
    end.at = Math.max(free, end.top)
    free = end.at + NAME_STEP * scale
  }
  // What was pushed past the foot comes back up.
  let floor = bbox.top + bbox.height
  for (const end of [...ends].reverse()) {
    end.at = Math.min(end.at, floor)
    floor = end.at - NAME_STEP * scale
  }
  ctx.textAlign = "left"
  ctx.textBaseline = "middle"
  for (const end of ends) {
    ctx.fillStyle = themeColour(end.ink)
    ctx.fillText(end.name, Math.min(end.left, bbox.left + bbox.width) + BEFORE_NAME * scale, end.at)
  }
}
