import { holdOf } from "./equilibrium"
import { type Answer, answerWhenDrawn, halfStringRate } from "./implicit"
import { changing, type LimbParameter, limbParameters, type ParameterRates } from "./parameters"
import { type Differentiated, type LimbRates, logarithmicForceRate, ratesOf } from "./rates"
import { shapeOf } from "./shape"
import type { BracedLimbs, LimbState } from "./types"
import { DifferentiatedPass } from "./variation"

export type LimbSensitivities = Readonly<Record<LimbParameter, LimbRates>>

/**
 * Exact derivatives of a solved state by every parameter, with the string on the limb too: the differentiated
 * integration, and the implicit function theorem on the closing at brace (which sets the half string), at full draw
 * (which sets the stiffness) and at the state.
 *
 * `draw` moves the nock alone. Other parameters leave the nock where it is, so a state that stays at brace while
 * `braceHeight` changes moves by the sum of both; likewise at full draw with `drawLength`. Where the string is just
 * about to lift off the limb the derivatives are those of the side the state is on.
 */
export function limbSensitivities(braced: BracedLimbs, state: LimbState): LimbSensitivities {
  const { brace, full } = endsOf(braced)
  const at = state === braced.brace ? brace : state === braced.full ? full : differentiated(braced, state)
  const ratesBy = (parameter: LimbParameter): LimbRates => {
    const rates = changing(parameter)
    const halfString = halfStringRate(braced.setup, brace.pass, brace.hold, rates)
    const answer = answerOf(braced, at, rates, halfString)
    const fullAnswer = answerOf(braced, full, { ...rates, draw: rates.drawLength }, halfString)
    const scaling = rates.drawWeight / braced.setup.drawWeight - logarithmicForceRate(full, fullAnswer)
    return {
      ...ratesOf(braced.setup, at, answer, rates, scaling),
      halfString: braced.setup.limb.length * halfString + (rates.length * braced.halfString) / braced.setup.limb.length,
    }
  }
  return Object.fromEntries(limbParameters.map((name) => [name, ratesBy(name)])) as Record<LimbParameter, LimbRates>
}

interface Ends {
  readonly brace: Differentiated
  readonly full: Differentiated
}

/** What every state of a bow depends on, worked out once for the bow. */
const known = new WeakMap<BracedLimbs, Ends>()

function endsOf(braced: BracedLimbs): Ends {
  const found = known.get(braced)
  if (found !== undefined) return found
  const ends = { brace: differentiated(braced, braced.brace), full: differentiated(braced, braced.full) }
  known.set(braced, ends)
  return ends
}

function differentiated({ setup }: BracedLimbs, state: LimbState): Differentiated {
  const shape = shapeOf(setup.limb)
  const hold = holdOf(shape, state.unknowns, setup.stringWrap === true)
  const pass = new DifferentiatedPass()
  pass.run(shape, hold)
  return { state, hold, pass }
}

const answerOf = (braced: BracedLimbs, at: Differentiated, rates: ParameterRates, halfString: number): Answer =>
  answerWhenDrawn(braced.setup, at.pass, at.hold, at.state.draw, at.state.stringAngle, halfString, rates)
