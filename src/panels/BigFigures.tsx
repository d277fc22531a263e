import type { ReactNode } from "react"
import { forwardVerdict, massVerdict, netLiftVerdict, netLiftWords, withSpread } from "../describe/balanceText"
import { isTilted } from "../describe/placeWords"
import { spreads } from "../state/spreads"
import { useLive, usePreferences } from "../state/useBench"
import { figures as words } from "../words/figures"
import { Readout } from "./Readout"
import { TargetGauge } from "./TargetGauge"
import { VerdictLine } from "./Verdict"
import "./figures.css"

/** The three numbers a coach reads from two metres away. */
export function BigFigures() {
  return (
    <section className="big-figures" aria-label={words.key}>
      <BalancePoint />
      <NetAtFullDraw />
      <Mass />
    </section>
  )
}

function BalancePoint() {
  const value = useLive(({ evaluation }) => evaluation.now.centre[0] * 1e3)
  const spread = useLive((state) => spreads(state)?.["centreMm.forward"])
  const target = useLive(({ scene }) => scene.target.forwardMm)
  const units = usePreferences()
  const tilted = useLive(({ scene: { pose } }) => isTilted(pose))
  const verdict = forwardVerdict(value, target, units)
  return (
    <Figure
      name={words.balance}
      place={tilted ? words.alongBow : words.ahead}
      number={<Readout of="centreMm.forward" />}
    >
      {target !== undefined && <TargetGauge value={value} target={target} spread={spread} />}
      <VerdictLine of="centreMm.forward" verdict={verdict} across />
      {verdict.target !== null && <span className="figure-target">{verdict.target}</span>}
    </Figure>
  )
}

function NetAtFullDraw() {
  const value = useLive(({ evaluation }) => evaluation.fullDraw.netLift)
  const spread = useLive((state) => spreads(state)?.["fullDraw.netLiftNm"])
  const target = useLive(({ scene }) => scene.target.netLiftNm)
  const units = usePreferences()
  const verdict = netLiftVerdict(value, target, units)
  return (
    <Figure name={words.net} place={words.heldLevel} number={<Readout of="fullDraw.netLiftNm" sign />}>
      <span className="verdict">
        {withSpread({ standing: "untargeted", words: netLiftWords(value), target: null }, spread).words}
      </span>
      {verdict.target !== null && (
        <>
          <VerdictLine of="fullDraw.netLiftNm" verdict={verdict} />
          <span className="figure-target">{verdict.target}</span>
        </>
      )}
    </Figure>
  )
}

function Mass() {
  const value = useLive(({ evaluation }) => evaluation.now.mass * 1e3)
  const max = useLive(({ scene }) => scene.target.massMaxG)
  const units = usePreferences()
  const verdict = massVerdict(value, max, units)
  return (
    <Figure name={words.mass} place={words.asHeld} number={<Readout of="massG" />}>
      {verdict.target !== null && (
        <>
          <VerdictLine of="massG" verdict={verdict} />
          <span className="figure-target">{verdict.target}</span>
        </>
      )}
    </Figure>
  )
}

interface FigureProps {
  readonly name: string
  readonly place: string
  readonly number: ReactNode
  readonly children: ReactNode
}

function Figure({ name, place, number, children }: FigureProps) {
  return (
    <div className="big-figure">
      <span className="big-figure-name">
        {name} <span className="big-figure-place">{place}</span>
      </span>
      <span className="big-figure-number">{number}</span>
      {children}
    </div>
  )
}
