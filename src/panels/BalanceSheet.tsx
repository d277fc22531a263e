import { lazy, type ReactNode, Suspense } from "react"
import { type Span, sideVerdict, upVerdict, type Verdict } from "../describe/balanceText"
import type { UnitChoice } from "../describe/format"
import { type ReadoutKey, readouts } from "../describe/readouts"
import type { Target } from "../scene/schema"
import { figures } from "../state/derived"
import { useLive, usePreferences } from "../state/useBench"
import { figures as words } from "../words/figures"
import { Readout } from "./Readout"
import "./sheet.css"
import { TurnBars } from "./TurnBars"
import { VerdictLine } from "./Verdict"

const Meanings = lazy(() => import("./Meanings"))

const atPose: readonly ReadoutKey[] = ["armForwardMm", "armSideMm", "noseDownNm", "cantRightNm", "holdForceN"]
const atFullDraw: readonly ReadoutKey[] = [
  "fullDraw.liftNm",
  "fullDraw.noseDownNm",
  "fullDraw.centreMm.forward",
  "fullDraw.balancedForwardMm",
  "fullDraw.gripShiftMm",
  "fullDraw.holdForceN",
  "fullDraw.massG",
]
const turning: readonly ReadoutKey[] = ["inertiaGrip.pitch", "inertiaGrip.yaw", "inertiaGrip.roll", "pitchInertiaFree"]
const more: readonly ReadoutKey[] = ["stripped.massG", "principal.0", "principal.1", "principal.2"]

/** Numbers whose sign says a direction. */
const signed: ReadonlySet<ReadoutKey> = new Set(["fullDraw.gripShiftMm", "cantRightNm", "armSideMm"])

/** Every live number that is not one of the three big ones. */
export function BalanceSheet() {
  return (
    <div className="balance-sheet">
      <Group name={words.atPose} keys={["centreMm.up", "centreMm.side", ...atPose]}>
        <dl className="figure-rows">
          <JudgedRow of="centreMm.up" target={(target) => target.upMm} judge={upVerdict} />
          <JudgedRow of="centreMm.side" target={(target) => target.sideMm} judge={sideVerdict} />
          {atPose.map((key) => (
            <FigureRow key={key} of={key} />
          ))}
        </dl>
      </Group>
      <Group name={words.atFullDraw} keys={["fullDraw.netLiftNm", ...atFullDraw]}>
        <dl className="figure-rows">
          {atFullDraw.map((key) => (
            <FigureRow key={key} of={key} />
          ))}
        </dl>
      </Group>
      <Group name={words.turning} keys={turning}>
        <TurnBars />
        <dl className="figure-rows">
          <FigureRow of="pitchInertiaFree" />
        </dl>
      </Group>
      <details className="figure-more">
        <summary>{words.more}</summary>
        <Group name={words.principal} keys={more}>
          <dl className="figure-rows">
            {more.map((key) => (
              <FigureRow key={key} of={key} />
            ))}
          </dl>
        </Group>
      </details>
    </div>
  )
}

/** Numbers under one heading, with what each means one press away. */
function Group({ name, keys, children }: { name: string; keys: readonly ReadoutKey[]; children: ReactNode }) {
  return (
    <section className="figure-group">
      <h2>{name}</h2>
      {children}
      <details className="figure-meanings">
        <summary>
          {words.whatIsThis}
          <span className="visually-hidden"> {name}</span>
        </summary>
        <Suspense fallback={null}>
          <Meanings keys={keys} />
        </Suspense>
      </details>
    </section>
  )
}

function FigureRow({ of: key, children }: { of: ReadoutKey; children?: ReactNode }) {
  const here = useLive((state) => readouts[key].of(figures(state)) !== null)
  if (!here) return null
  return (
    <div className="figure-row">
      <dt>{readouts[key].label}</dt>
      <dd>
        <Readout of={key} sign={signed.has(key)} />
      </dd>
      {children}
    </div>
  )
}

interface JudgedProps {
  readonly of: "centreMm.up" | "centreMm.side"
  readonly target: (target: Target) => Span | undefined
  readonly judge: (value: number, target: Span | undefined, units: UnitChoice) => Verdict
}

function JudgedRow({ of: key, target, judge }: JudgedProps) {
  const value = useLive(({ evaluation }) => evaluation.now.centre[key === "centreMm.up" ? 1 : 2] * 1e3)
  const span = useLive(({ scene }) => target(scene.target))
  const units = usePreferences()
  const verdict = judge(value, span, units)
  return (
    <FigureRow of={key}>
      {verdict.target !== null && (
        <dd className="figure-row-verdict">
          <VerdictLine of={key} verdict={verdict} across={key === "centreMm.side"} />
          <span className="figure-target">{verdict.target}</span>
        </dd>
      )}
    </FigureRow>
  )
}
