import { useCallback, useMemo } from "react"
import { said, shownUnit } from "../../describe/format"
import { flatnessSentence, slopeCsv, slopePointText } from "../../describe/hillText"
import { compareSlopes, FLATNESS_DEG, type SlopeCurve, STEEPEST_DEG } from "../../scene/hills"
import { beside } from "../../state/compared"
import { useLive } from "../../state/useBench"
import { hills } from "../../words/hills"
import { plot } from "../../words/plot"
import { Plot } from "../plot/Plot"
import type { PlotContent, PlotLine } from "../plot/plotted"
import type { SaveTable } from "./HillsSheet"

const words = hills.slopes

/** Net lift at full draw against slope: this rig, and with its swing weights locked and gone. */
export function SlopePlot({ onSave }: { onSave: SaveTable }) {
  const scene = useLive((state) => state.scene)
  const limbs = useLive(({ evaluation }) => evaluation.fullDraw.limbs)
  const units = useLive(({ preferences }) => preferences)
  const slopes = useMemo(() => compareSlopes(scene, limbs), [scene, limbs])
  const held = useLive(beside)
  const other = useMemo(
    () => (held === null ? undefined : compareSlopes(held.scene, held.evaluation.fullDraw.limbs).free),
    [held],
  )
  const { slopeDeg } = scene.pose
  const { factor, unit, decimals } = shownUnit("moment", units)
  const content = useMemo<PlotContent>(() => {
    const line = (name: string, curve: SlopeCurve, more: Partial<PlotLine>): PlotLine => ({
      name,
      values: curve.netLift.map((value) => value * factor),
      width: 1.5,
      ink: "--ink",
      ...more,
    })
    const others = [
      line(words.locked, slopes.locked, { dash: [8, 5] }),
      line(words.without, slopes.without, { dash: [2, 4], ink: "--ink-soft" }),
    ]
    return {
      x: slopes.slopesDeg,
      lines: [
        line(words.rig, slopes.free, { width: 2.5 }),
        ...(slopes.hasSwing ? others : []),
        ...(other === undefined ? [] : [line(plot.held, other, { ink: "--compared", width: 2, dash: [10, 3, 2, 3] })]),
      ],
      marks: [{ kind: "upright", x: slopeDeg, text: plot.now }],
    }
  }, [slopes, other, slopeDeg, factor])
  const say = useCallback((index: number) => slopePointText(slopes, index, units, other), [slopes, other, units])
  return (
    <section>
      <h2 className="sheet-heading">{words.heading}</h2>
      <Plot
        name={words.name}
        content={content}
        say={say}
        start={Math.round(Math.min(STEEPEST_DEG, Math.max(-STEEPEST_DEG, slopeDeg))) + STEEPEST_DEG}
        xAxis={{ label: words.along, span: [-STEEPEST_DEG, STEEPEST_DEG], decimals: 0 }}
        yAxis={{ label: words.netLift(unit), decimals }}
      />
      <dl className="figure-rows">
        <Spread name={words.spread(FLATNESS_DEG)} of="free" curve={slopes.free} />
        {slopes.hasSwing && <Spread name={words.spreadLocked} of="locked" curve={slopes.locked} />}
        {slopes.hasSwing && <Spread name={words.spreadWithout} of="without" curve={slopes.without} />}
        {other !== undefined && <Spread name={words.spreadHeld} of="held" curve={other} />}
      </dl>
      <p className="hills-note">{slopes.hasSwing ? flatnessSentence(slopes, units) : words.spreadNote}</p>
      <button type="button" onClick={() => onSave("net-lift-on-slopes", slopeCsv(slopes, other))}>
        {plot.save}
      </button>
    </section>
  )
}

function Spread({ name, of, curve }: { name: string; of: string; curve: SlopeCurve }) {
  const units = useLive(({ preferences }) => preferences)
  return (
    <div className="figure-row">
      <dt>{name}</dt>
      <dd data-figure={`flatness.${of}`} data-value={curve.flatness}>
        {said(curve.flatness, "moment", units)}
      </dd>
    </div>
  )
}
