import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import {
  type BracedLimbs,
  type LimbRates,
  type LimbSensitivities,
  limbSensitivities,
  type LimbState,
} from "../../core/limbs"
import { GRAM, MM } from "../assemble"
import type { LimbPlace } from "../limbPlace"
import { bracedLimbs, limbState } from "../recurvePlace"
import type { RecurveBow } from "../schema"
import type { LimbMotion, LimbMotions } from "./limbMotion"

/**
 * How a recurve's limbs in `place` answer, by the limb solution's own derivatives. Those leave the nock where it is,
 * while a pose is a fraction t of the way from brace to full draw: so with the brace height the nock moves by 1 - t of
 * it, with the draw length by t, and with the draw by the whole way. The draw weight scales the stiffness and bends
 * nothing.
 */
export function recurveMotions(bow: RecurveBow, { drawFraction }: LimbPlace): LimbMotions {
  const braced = bracedLimbs(bow)
  const state = limbState(bow, drawFraction)
  if (!braced.ok || !state.ok) throw new RangeError("these limbs have no solved shape")
  const rates = ratesOf(braced.value, state.value)
  const mass = bow.limbs.massG * GRAM
  const of = (...terms: readonly (readonly [LimbRates, number])[]) => motionOf(mass, terms)
  return {
    own: {
      "rootMm.forward": of([rates.rootForward, MM]),
      "rootMm.out": of([rates.rootOut, MM]),
      lengthMm: of([rates.length, MM]),
      rootAngleDeg: of([rates.rootAngle, DEGREE]),
      recurveDeg: of([rates.recurve, DEGREE]),
      recurveFrom: of([rates.recurveFrom, 1]),
      stiffnessTaper: of([rates.stiffnessTaper, 1]),
      massTaper: of([rates.massTaper, 1]),
    },
    braceHeight: of([rates.braceHeight, 1], [rates.draw, 1 - drawFraction]),
    drawLength: of([rates.drawLength, 1], [rates.draw, drawFraction]),
    drawFraction: of([rates.draw, (bow.drawLengthMm - bow.braceHeightMm) * MM]),
  }
}

/** Kept by the state: it stays the same object while a rig is changed on limbs that are not. */
const known = new WeakMap<LimbState, LimbSensitivities>()

function ratesOf(braced: BracedLimbs, state: LimbState): LimbSensitivities {
  const found = known.get(state) ?? limbSensitivities(braced, state)
  known.set(state, found)
  return found
}

/** A limb of `mass` (kg) under several rates at once, each so many times. */
function motionOf(mass: number, terms: readonly (readonly [LimbRates, number])[]): LimbMotion {
  const sum = (of: (rates: LimbRates) => number) => terms.reduce((total, [rates, k]) => total + k * of(rates), 0)
  return {
    centreForward: sum(({ centre }) => centre.forward),
    centreOut: sum(({ centre }) => centre.out),
    endForward: sum(({ contact }) => contact.forward),
    endOut: sum(({ contact }) => contact.out),
    second: {
      forward: mass * sum(({ secondMoments }) => secondMoments.forwardForward),
      out: mass * sum(({ secondMoments }) => secondMoments.outOut),
    },
  }
}
