import type { PlotContent, PlotLine } from "../../panels/plot/plotted"
import { type Motion, motions } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import type { Watched } from "./watched"

const DEGREE = Math.PI / 180
/** One sample in so many is plotted: more than there are pixels help nobody. */
export const PLOTTED = 4

/** Lines of the plots of one run, degrees; the moments of the clock are put in by `at`. */
export interface Traces {
  readonly x: readonly number[]
  readonly main: readonly PlotLine[]
  /** Every other motion of every bow; none where nothing else turns. */
  readonly others: readonly PlotLine[]
}

/** Of the largest turn; less than this is no turn that any plot shows. */
const NOTHING = 1e-4

const DASHES: readonly (readonly number[] | undefined)[] = [undefined, [7, 4]]

export function tracesOf(bows: readonly Watched[], motion: Motion): Traces {
  const first = bows[0]!.trace
  const kept = first.angles.map((_, index) => index).filter((index) => index % PLOTTED === 0)
  const line = (bow: Watched, of: Motion, more: Pick<PlotLine, "name" | "width" | "dash">): PlotLine => ({
    values: kept.map((index) => bow.trace.angles[index]![motions.indexOf(of)]! / DEGREE),
    ink: bow.which === "now" ? "--ink" : "--compared",
    ...more,
  })
  const main = bows.map((bow) =>
    line(bow, motion, {
      name: bow.name,
      ...(bow.which === "now" ? { width: 2.5 } : { width: 2, dash: [10, 3, 2, 3] }),
    }),
  )
  const rest = motions.filter((other) => other !== motion).reverse()
  const others = bows.flatMap((bow) =>
    rest.map((other, index) => {
      const word = nudge.motionsWithin[other]
      const dash = DASHES[index]
      const name = bow.which === "now" ? word : nudge.bowTurns(bow.name, word)
      return line(bow, other, { name, width: bow.which === "now" ? 2 : 1.5, ...(dash && { dash }) })
    }),
  )
  const size = (lines: readonly PlotLine[]) =>
    Math.max(...lines.flatMap(({ values }) => values.map((v) => Math.abs(v ?? 0))))
  return {
    x: kept.map((index) => index * first.step),
    main,
    others: size(others) > NOTHING * size(main) ? others : [],
  }
}

/** A plot with the clock's moment in it, and that at which the arrow leaves. */
export const contentOf = (
  x: readonly number[],
  lines: readonly PlotLine[],
  time: number,
  leavesS: number | null,
): PlotContent => ({
  x,
  lines,
  marks: [
    ...(leavesS === null ? [] : [{ kind: "upright", x: leavesS, text: nudge.arrowLeaves } as const]),
    { kind: "upright", x: time, text: "" },
  ],
})
