import { type KeyboardEvent, type Ref, useEffect, useImperativeHandle, useLayoutEffect, useRef } from "react"
import type uPlot from "uplot"
import "uplot/dist/uPlot.min.css"
import { plot as words } from "../../words/plot"
import { whenQuiet } from "../whenQuiet"
import { buildPlot, dataOf, plotHeight, type PlotShape } from "./build"
import "./plot.css"
import type { PlotContent } from "./plotted"

interface Props extends PlotShape {
  /** What is plotted, for those who do not see it. */
  readonly name: string
  readonly content: PlotContent
  /** The values at one index of x, said in full. */
  readonly say: (index: number) => string
  /** Where the reading stands before anyone moves it. */
  readonly start: number
  /** For a plot that runs: new content without a render. */
  readonly ref?: Ref<PlotRun>
}

export interface PlotRun {
  /** With `at` the reading goes there, unless somebody has moved it. */
  show(content: PlotContent, at?: number): void
}

const COARSE = 5

/**
 * A plot with one reading cursor: moved by the pointer, or with arrow keys once the plot has the focus. The reading is
 * written under it. Nothing of React moves while the cursor does. A screen reader hears each step of a key; of a run or
 * of a pointer on its way, only where it comes to rest.
 */
export function Plot({ name, content, say, start, xAxis, yAxis, ref }: Props) {
  const frame = useRef<HTMLDivElement>(null)
  const host = useRef<HTMLDivElement>(null)
  const output = useRef<HTMLOutputElement>(null)
  const plot = useRef<uPlot | null>(null)
  const live = useRef({ content, say, index: start, moved: false })
  const { label: xLabel, decimals: xDecimals, span: xSpan } = xAxis
  const { label: yLabel, span: ySpan } = yAxis
  const spans = [...(xSpan ?? ["", ""]), ...(ySpan ?? ["", ""])].join()
  const look = content.lines.map(({ name: line, dash, ink }) => [line, dash, ink].join()).join(";")

  const settling = useRef<(() => void) | null>(null)
  const value = () => {
    const { index, content: now } = live.current
    frame.current?.setAttribute("aria-valuenow", String(index))
    frame.current?.setAttribute("aria-valuemax", String(Math.max(0, now.x.length - 1)))
    frame.current?.setAttribute("aria-valuetext", output.current?.textContent ?? "")
  }
  const tell = (index: number, passing: boolean) => {
    const count = live.current.content.x.length
    const at = Math.min(count - 1, Math.max(0, index))
    live.current.index = at
    if (output.current !== null) output.current.textContent = count === 0 ? "" : live.current.say(at)
    settling.current?.()
    settling.current = passing ? whenQuiet(value) : null
    if (!passing) value()
  }
  const show = (next: PlotContent, passing: boolean) => {
    live.current.content = next
    plot.current?.setData(dataOf(next))
    tell(live.current.index, passing)
  }
  useImperativeHandle(ref, () => ({
    show(next, at) {
      if (at !== undefined && !live.current.moved) live.current.index = at
      show(next, true)
    },
  }))
  useEffect(() => () => settling.current?.(), [])

  // Built anew only when its axes or the kinds of its lines change; everything else goes through `show`.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the texts stand for the objects they were made from
  useEffect(() => {
    const place = host.current
    if (place === null) return
    const built = buildPlot(
      place,
      { xAxis, yAxis },
      () => live.current.content,
      (index) => {
        if (index === null) return
        live.current.moved = true
        tell(index, true)
      },
    )
    plot.current = built
    const sized = new ResizeObserver(() => {
      if (place.clientWidth > 0) built.setSize({ width: place.clientWidth, height: plotHeight })
    })
    sized.observe(place)
    const themed = new MutationObserver(() => built.redraw(false))
    themed.observe(document.documentElement, { attributeFilter: ["data-theme"] })
    return () => {
      sized.disconnect()
      themed.disconnect()
      built.destroy()
      plot.current = null
    }
  }, [xLabel, yLabel, xDecimals, spans, look])

  // biome-ignore lint/correctness/useExhaustiveDependencies: `show` and `tell` only touch refs
  useLayoutEffect(() => {
    live.current.say = say
    if (!live.current.moved) live.current.index = start
    show(content, false)
  }, [content, say, start])

  const moveTo = (index: number, passing = false) => {
    const { x } = live.current.content
    const at = Math.min(x.length - 1, Math.max(0, index))
    if (x[at] === undefined) return
    live.current.moved = true
    const built = plot.current
    built?.setCursor({ left: built.valToPos(x[at], "x"), top: 1 }, false)
    tell(at, passing)
  }
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey) return
    const by = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key]
    const { index, content: now } = live.current
    if (by !== undefined) moveTo(index + by * (event.shiftKey ? COARSE : 1))
    else if (event.key === "PageUp" || event.key === "PageDown")
      moveTo(index + (event.key === "PageUp" ? 1 : -1) * COARSE)
    else if (event.key === "Home") moveTo(0)
    else if (event.key === "End") moveTo(now.x.length - 1)
    else return
    event.preventDefault()
  }

  return (
    <div className="plot">
      <div
        ref={frame}
        className="plot-frame"
        role="slider"
        tabIndex={0}
        aria-label={words.readAlong(name)}
        aria-valuemin={0}
        aria-valuenow={start}
        onKeyDown={onKeyDown}
        onPointerMove={(event) => {
          const built = plot.current
          if (event.pointerType !== "touch" || built === null) return
          moveTo(built.posToIdx(event.clientX - built.over.getBoundingClientRect().left), true)
        }}
      >
        <div ref={host} className="plot-host" style={{ height: plotHeight }} aria-hidden="true" />
      </div>
      <output ref={output} className="plot-reading" aria-live="off" />
    </div>
  )
}
