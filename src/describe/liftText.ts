import { RADIAN_PER_DEGREE } from "../core/constants"
import type { Evaluation } from "../scene/evaluate"
import { lift } from "../words/lift"
import { fixed, said, shownUnit, type UnitChoice } from "./format"

/**
 * How the lift answers to the elbow and the nock, N·m per degree and per millimetre: the exact slopes of
 * lift = F (h cos ε - L sin ε). F in N, h and L in m, ε in rad.
 */
export function liftSlopes(hold: { force: number; nockHeight: number; draw: number; elbow: number }) {
  const { force, nockHeight, draw, elbow } = hold
  return {
    perDegree: (-force * (nockHeight * Math.sin(elbow) + draw * Math.cos(elbow)) * Math.PI) / 180,
    perMillimetre: (force * Math.cos(elbow)) / 1000,
  }
}

const slopesOf = ({ scene: { bow, archer }, fullDraw }: Evaluation) =>
  liftSlopes({
    force: fullDraw.limbs.holdForce,
    nockHeight: bow.nockHeightMm / 1e3,
    draw: bow.drawLengthMm / 1e3,
    elbow: archer.elbowElevationDeg * RADIAN_PER_DEGREE,
  })

/** "Each degree higher lowers the lift by 2.05 N·m.": what the draw elbow does. */
export const elbowText = (evaluation: Evaluation, units: UnitChoice): string =>
  answer(lift.degree, slopesOf(evaluation).perDegree, units)

/** "Each millimetre higher raises the lift by 0.18 N·m.": what the nock does. */
export function nockText(evaluation: Evaluation, units: UnitChoice): string {
  const { perMillimetre } = slopesOf(evaluation)
  return units.lengthUnit === "mm"
    ? answer(lift.millimetre, perMillimetre, units)
    : answer(lift.inch, perMillimetre * 2.54, units)
}

const answer = (step: typeof lift.degree, nm: number, units: UnitChoice): string =>
  (nm >= 0 ? step.raises : step.lowers)(said(Math.abs(nm), "moment", units))

/** "lift +0.12 N·m": by how much a change has raised the lift. */
export function liftChange(nm: number, units: UnitChoice): string {
  const { unit, factor, decimals } = shownUnit("moment", units)
  const none = Number((nm * factor).toFixed(decimals)) === 0
  return none ? lift.unchanged : lift.changed(`${nm > 0 ? "+" : ""}${fixed(nm * factor, decimals)}\u00a0${unit}`)
}
