import { useCallback, useEffect, useMemo, useRef } from "react"
import { DROP_DECIMALS, othersPointText, turnPointText } from "../../describe/nudgeText"
import { Plot, type PlotRun } from "../../panels/plot/Plot"
import type { Motion } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import { plot } from "../../words/plot"
import type { Clock } from "./clock"
import { contentOf, PLOTTED, tracesOf } from "./traceContent"
import type { Watched } from "./watched"

interface Props {
  readonly bows: readonly Watched[]
  readonly motion: Motion
  readonly clock: Clock
  /** Null where no arrow leaves. */
  readonly leavesS: number | null
}

/** Turns against time: the motion that was asked for, and what else turns with it. */
export function Traces({ bows, motion, clock, leavesS }: Props) {
  const main = useRef<PlotRun>(null)
  const others = useRef<PlotRun>(null)
  const traces = useMemo(() => tracesOf(bows, motion), [bows, motion])
  const { step } = bows[0]!.trace
  const start = useMemo(
    () => ({
      main: contentOf(traces.x, traces.main, clock.now(), leavesS),
      others: contentOf(traces.x, traces.others, clock.now(), leavesS),
    }),
    [traces, clock, leavesS],
  )
  useEffect(
    () =>
      clock.watch((time) => {
        const at = Math.round(time / (step * PLOTTED))
        main.current?.show(contentOf(traces.x, traces.main, time, leavesS), at)
        others.current?.show(contentOf(traces.x, traces.others, time, leavesS), at)
      }),
    [clock, traces, step, leavesS],
  )
  const angles = useCallback(
    (index: number) => bows.map(({ name, trace }) => [name, trace.angles[index * PLOTTED]!] as const),
    [bows],
  )
  const say = useCallback(
    (index: number) =>
      turnPointText(traces.x[index]!, motion, angles(index), leavesS === null ? DROP_DECIMALS : undefined),
    [traces, motion, angles, leavesS],
  )
  const sayOthers = useCallback(
    (index: number) => othersPointText(traces.x[index]!, motion, angles(index)),
    [traces, motion, angles],
  )
  const xAxis = { label: plot.time, span: [0, traces.x.at(-1)!] as const, decimals: 2 }
  return (
    <section>
      <h2 className="sheet-heading">{nudge.traces}</h2>
      <Plot
        ref={main}
        name={nudge.againstTime[motion]}
        content={start.main}
        say={say}
        start={0}
        xAxis={xAxis}
        yAxis={{ label: nudge.axes[motion], decimals: 2 }}
      />
      {leavesS !== null &&
        (traces.others.length === 0 ? (
          <p className="hills-note">{nudge.nothingElse}</p>
        ) : (
          <>
            <h3 className="nudge-subheading">{nudge.others}</h3>
            <p className="hills-note">{nudge.coupling}</p>
            <Plot
              ref={others}
              name={nudge.others}
              content={start.others}
              say={sayOthers}
              start={0}
              xAxis={xAxis}
              yAxis={{ label: nudge.anyTurn, decimals: 3 }}
            />
          </>
        ))}
    </section>
  )
}
