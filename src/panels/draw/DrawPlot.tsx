import { useCallback, useMemo } from "react"
import { stringLengthText } from "../../describe/bowLength"
import { amoLengthMm, amoLengthText, drawCsv, drawPointText, energyText } from "../../describe/drawText"
import { fixed, said, shownUnit, type UnitChoice } from "../../describe/format"
import { problemText } from "../../describe/problemText"
import { type DrawWork, drawWork, forcesAt } from "../../scene/drawWork"
import type { LimbPlace } from "../../scene/limbPlace"
import type { Bow } from "../../scene/schema"
import { beside } from "../../state/compared"
import { sameValue } from "../../state/same"
import { useLive } from "../../state/useBench"
import { draw } from "../../words/draw"
import { plot } from "../../words/plot"
import { Plot } from "../plot/Plot"
import type { PlotContent, PlotLine } from "../plot/plotted"
import type { SaveTable } from "./DrawSheet"
import { useDrawWork } from "./useDrawWork"

const words = draw.curve

/** Force against draw, with the energy under it, and the numbers that belong to it. */
export function DrawPlot({ onSave }: { onSave: SaveTable }) {
  const bow = useLive(({ scene }) => scene.bow)
  const { work, behind } = useDrawWork(bow)
  const scene = useLive((state) => state.scene)
  const preferences = useLive((state) => state.preferences)
  return (
    <section>
      <h2 className="sheet-heading">{words.heading}</h2>
      {work.ok ? (
        <Curve work={work.value} behind={behind} bow={bow} onSave={onSave} />
      ) : (
        <p className="problem">{problemText({ scene, preferences }, work.errors)}</p>
      )}
    </section>
  )
}

interface CurveProps {
  readonly work: DrawWork
  /** The curve is that of the limbs before the change that is going on. */
  readonly behind: boolean
  readonly bow: Bow
  readonly onSave: SaveTable
}

function Curve({ work, behind, bow, onSave }: CurveProps) {
  const limbs = useLive(({ evaluation }) => evaluation.now.limbs)
  const full = useLive(({ evaluation }) => evaluation.fullDraw.limbs)
  const units = useLive(({ preferences }) => preferences)
  const other = useLive((state) => beside(state)?.scene.bow ?? null)
  const held = useMemo(
    () => (other === null || sameValue(other, bow) ? null : heldForces(other, work)),
    [other, bow, work],
  )
  const content = useMemo(
    () => contentOf({ work, held, behind, bow, limbs, full }, units),
    [work, held, behind, bow, limbs, full, units],
  )
  const say = useCallback(
    (index: number) => (behind ? words.behind : drawPointText(work.points[index]!, units, held?.[index])),
    [work, held, behind, units],
  )
  const length = shownUnit("length", units)
  const force = shownUnit("newtons", units)
  const most = Math.max(...work.points.map(({ forceN }) => forceN)) * force.factor
  // What belongs to the curve is not known until the curve is.
  const late = (value: number) => (behind ? null : value)
  // A round end that stays put while a draw weight is dragged.
  const top = roundUp(most * 1.12)
  return (
    <>
      {work.sketch && <p className="draw-note">{words.sketch}</p>}
      <Plot
        name={work.sketch ? words.sketchName : words.name}
        content={content}
        say={say}
        start={work.points.length - 1}
        xAxis={{ label: words.along(length.unit), decimals: length.decimals }}
        yAxis={{ label: words.force(force.unit), span: [0, top], decimals: force.decimals }}
      />
      <dl className="figure-rows">
        <Row name={words.stored} value={late(work.storedJ)} text={energyText(work.storedJ)} of="storedJ" />
        {work.fullness !== null && (
          <Row name={words.fullness} value={late(work.fullness)} text={fixed(work.fullness, 3)} of="fullness" />
        )}
        <Row name={words.weight} value={bow.drawWeightLbf} text={weightText(bow, units)} of="drawWeightLbf" />
        <Row
          name={words.amo}
          value={amoLengthMm(bow.drawLengthMm)}
          text={amoLengthText(bow.drawLengthMm, units)}
          of="amoLengthMm"
        />
        {work.stringLength !== null && (
          <Row
            name={words.string}
            value={late(work.stringLength)}
            text={stringLengthText(work.stringLength, units)}
            of="stringLength"
          />
        )}
      </dl>
      {work.fullness !== null && <p className="draw-note">{words.fullnessNote}</p>}
      <button
        type="button"
        onClick={() => {
          const now = drawWork(bow)
          if (now.ok) onSave("draw-curve", drawCsv(now.value, held ?? undefined))
        }}
      >
        {plot.save}
      </button>
    </>
  )
}

/** Without a value a dash is shown. */
function Row({ name, value, text, of }: { name: string; value: number | null; text: string; of: string }) {
  return (
    <div className="figure-row">
      <dt>{name}</dt>
      <dd data-figure={of} data-value={value ?? undefined}>
        {value === null ? "–" : text}
      </dd>
    </div>
  )
}

function weightText({ kind, drawWeightLbf }: Bow, units: UnitChoice): string {
  const weight = said(drawWeightLbf, "force", units)
  return kind === "compound" ? words.atPeak(weight) : weight
}

/** How a curve is drawn that is not the bow's any more. */
const BEHIND = { ink: "--ink-soft", dash: [2, 5], shaded: false } as const

interface Drawn {
  readonly work: DrawWork
  /** Forces of the bow held to compare at the same draws, N; null where its curve would be the same. */
  readonly held: readonly (number | null)[] | null
  readonly behind: boolean
  readonly bow: Bow
  /** As held, and at full draw. */
  readonly limbs: LimbPlace
  readonly full: LimbPlace
}

function heldForces(bow: Bow, { points }: DrawWork): (number | null)[] | null {
  const other = drawWork(bow)
  return other.ok
    ? forcesAt(
        other.value,
        points.map(({ drawMm }) => drawMm),
      )
    : null
}

const heldLine = (forces: readonly (number | null)[], factor: number): PlotLine => ({
  name: plot.held,
  values: forces.map((force) => (force === null ? null : force * factor)),
  width: 2,
  ink: "--compared",
  dash: [10, 3, 2, 3],
})

function contentOf({ work, held, behind, bow, limbs, full }: Drawn, units: UnitChoice): PlotContent {
  const length = shownUnit("length", units).factor
  const force = shownUnit("newtons", units).factor
  const amo = said(amoLengthMm(bow.drawLengthMm), "length", units)
  const weight =
    bow.kind === "compound" ? said(full.holdForce, "newtons", units) : said(bow.drawWeightLbf, "force", units)
  return {
    x: work.points.map(({ drawMm }) => drawMm * length),
    lines: [
      {
        name: "",
        values: work.points.map(({ forceN }) => forceN * force),
        width: 2,
        ...(behind ? BEHIND : { ink: "--ink", shaded: true }),
        ...(work.sketch ? { dash: [8, 5] } : {}),
      },
      ...(held === null ? [] : [heldLine(held, force)]),
    ],
    marks: [
      {
        kind: "corner",
        x: full.draw * 1e3 * length,
        y: full.holdForce * force,
        text: words.end(weight, amo),
        below: work.sketch,
      },
      { kind: "point", x: limbs.draw * 1e3 * length, y: limbs.holdForce * force, text: plot.now },
    ],
  }
}

/** The next of 1, 1.5, 2, 3, 4, 5, 6, 8, 10 times a power of ten. */
function roundUp(value: number): number {
  if (!(value > 0)) return 1
  const power = 10 ** Math.floor(Math.log10(value))
  return ([1, 1.5, 2, 3, 4, 5, 6, 8, 10].find((digit) => digit * power >= value) ?? 10) * power
}
