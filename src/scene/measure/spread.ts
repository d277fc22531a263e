import { bodyRates, type Determined, type Fit, spreadOf } from "../../core/measure"
import { centreRate, type MassMoments, movedRates } from "../../core/sensitivity"
import { addTensors, aboutAxis, dot, pointTensor, scale, scaleTensor, type Tensor } from "../../core/solids"
import type { Evaluation, PoseBalance } from "../evaluate"
import { millimetres } from "../figures"
import { figureRates } from "../sensitivity/figureRates"

/**
 * How far each live number may be off at 95 % by what the readings leave open of the riser: by the report's key, in its
 * unit. Infinite where a number hangs on what they do not determine; numbers that do not depend on the riser are not in it.
 */
export type Spreads = Readonly<Record<string, number>>

/**
 * The spreads of an evaluated scene whose riser is the fitted one. The rates are exact; the limbs, the string and the
 * rig are taken as the scene has them.
 */
export function figureSpreads(evaluation: Evaluation, fit: Determined & Pick<Fit, "body">): Spreads {
  const rates = bodyRates(fit.body).map((rate) => numberRates(evaluation, rate))
  const keys = Object.keys(rates[0] ?? {})
  const spread = (key: string) =>
    spreadOf(
      fit,
      rates.map((rate) => rate[key]!),
    )
  return Object.fromEntries(keys.map((key) => [key, spread(key)]))
}

/** What a change of the riser does to every live number that depends on it, in the report's keys and units. */
export function numberRates(evaluation: Evaluation, rate: MassMoments): Record<string, number> {
  const { now, fullDraw, principal, pitchInertiaFree } = evaluation
  const figures = figureRates(evaluation, { now: rate, drawn: rate })
  const { massG, noseDownNm, cantRightNm, inertiaGrip } = figures
  const [forward, up, side] = figures.centreMm
  const { netLiftNm, balancedForwardMm } = figures.fullDraw
  const central = centralRate(now, rate)
  const [first, second, third] = principal.axes.map((axis) => aboutAxis(central, axis))
  return {
    massG,
    "centreMm.forward": forward,
    "centreMm.up": up,
    "centreMm.side": side,
    armForwardMm: dot(now.rotation[0], figures.centreMm),
    armSideMm: dot(now.rotation[2], figures.centreMm),
    noseDownNm,
    cantRightNm,
    "inertiaGrip.pitch": inertiaGrip.pitch,
    "inertiaGrip.yaw": inertiaGrip.yaw,
    "inertiaGrip.roll": inertiaGrip.roll,
    // A free weight takes away the same whatever the riser.
    ...(pitchInertiaFree === null ? {} : { pitchInertiaFree: inertiaGrip.pitch }),
    "principal.0": first!,
    "principal.1": second!,
    "principal.2": third!,
    "stripped.massG": massG,
    "fullDraw.netLiftNm": netLiftNm,
    // The line of pull does not know the riser: what the net loses, the nose gains.
    "fullDraw.noseDownNm": 0 - netLiftNm,
    "fullDraw.balancedForwardMm": balancedForwardMm,
    "fullDraw.centreMm.forward": millimetres(centreRate(fullDraw, rate))[0],
    "fullDraw.gripShiftMm": (netLiftNm / fullDraw.limbs.holdForce) * 1e3,
    "fullDraw.massG": massG,
  }
}

/**
 * Rate of the tensor about the centre of mass, I - M(c² 1 - c cᵀ). A principal moment changes as the moment about its own
 * axis does, to first order: the axis' own turn does not count. Where two are equal the axes are any, and so are the rates.
 */
function centralRate({ mass, centre, aboutOrigin }: PoseBalance, rate: MassMoments): Tensor {
  const whole: MassMoments = { mass, first: scale(centre, mass), aboutOrigin }
  const away = addTensors(
    pointTensor(rate.mass, centre),
    movedRates(whole, centreRate({ mass, centre }, rate)).aboutOrigin,
  )
  return addTensors(rate.aboutOrigin, scaleTensor(away, -1))
}
