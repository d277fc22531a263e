import uPlot from "uplot"
import { localNumber } from "../../words/numbers"
import { drawNotes, nameRoom, plotFont, themeColour } from "./inkwell"
import { markDecimals } from "./markDecimals"
import type { PlotAxis, PlotContent } from "./plotted"

export interface PlotShape {
  readonly xAxis: PlotAxis
  readonly yAxis: PlotAxis
}

export const plotHeight = 230
/** Between the numbers at the upright axis and the plot, CSS pixels: a point marked on the axis covers none. */
const POINT_ROOM = 9

/** Builds a plot of as many lines as `content()` has; it asks again for the content whenever it draws. */
export function buildPlot(
  host: HTMLElement,
  { xAxis, yAxis }: PlotShape,
  content: () => PlotContent,
  onCursor: (index: number | null) => void,
): uPlot {
  const { lines } = content()
  const font = plotFont(1)
  const axis = (of: PlotAxis, size: number): uPlot.Axis => ({
    label: of.label,
    labelSize: 18,
    labelFont: font,
    font,
    size,
    stroke: () => themeColour("--ink"),
    grid: { stroke: () => themeColour("--line"), width: 1 },
    ticks: { show: false },
    values: (_, splits) => splits.map((value) => localNumber(value.toFixed(markDecimals(splits)))),
  })
  const options: uPlot.Options = {
    width: Math.max(host.clientWidth, 1),
    height: plotHeight,
    padding: [10, nameRoom(lines), 0, 0],
    // Rounded to whole pixels a smooth curve looks bent.
    pxAlign: false,
    legend: { show: false },
    cursor: { y: false, drag: { x: false, y: false } },
    scales: {
      x: { time: false, range: (_, min, max) => [...stretched(min, max, xAxis.span, 0)] },
      y: { range: (_, min, max) => [...stretched(min, max, yAxis.span, 0.06)] },
    },
    axes: [
      { ...axis(xAxis, 26), space: 44 },
      { ...axis(yAxis, 40), gap: POINT_ROOM },
    ],
    series: [
      {},
      ...lines.map(
        ({ ink, width, dash, shaded }): uPlot.Series => ({
          stroke: () => themeColour(ink),
          width,
          points: { show: false },
          ...(dash === undefined ? {} : { dash: [...dash] }),
          ...(shaded ? { fill: () => themeColour("--panel-sunk"), fillTo: 0 } : {}),
        }),
      ),
    ],
    hooks: {
      draw: [(plot) => drawNotes(plot, content())],
      setCursor: [(plot) => onCursor(plot.cursor.idx ?? null)],
    },
  }
  return new uPlot(options, dataOf(content()), host)
}

export const dataOf = ({ x, lines }: PlotContent): uPlot.AlignedData => [
  [...x],
  ...lines.map(({ values }) => [...values]),
]

function stretched(
  min: number | null,
  max: number | null,
  span: readonly [number, number] | undefined,
  room: number,
): [number, number] {
  const low = Math.min(min ?? Number.POSITIVE_INFINITY, span?.[0] ?? Number.POSITIVE_INFINITY)
  const high = Math.max(max ?? Number.NEGATIVE_INFINITY, span?.[1] ?? Number.NEGATIVE_INFINITY)
  if (!(low < high)) return Number.isFinite(low) ? [low - 1, low + 1] : [0, 1]
  const margin = (high - low) * room
  return [low === span?.[0] && low === 0 ? 0 : low - margin, high === span?.[1] && high === 0 ? 0 : high + margin]
}
