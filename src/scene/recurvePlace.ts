import { NEWTON_PER_LBF, RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import {
  type BracedLimbs,
  type LimbResult,
  type LimbSetup,
  type LimbState,
  type PlanePoint,
  solveBrace,
  solveDrawn,
} from "../core/limbs"
import type { Solid, Vec3 } from "../core/solids"
import { GRAM, MM } from "./assemble/parts"
import type { LimbPlace } from "./limbPlace"
import { success } from "./result"
import type { RecurveBow } from "./schema"

/** A recurve bow's limbs in SI, as the solver takes them. */
export function limbSetup(bow: RecurveBow): LimbSetup {
  const { limbs } = bow
  return {
    limb: {
      rootForward: limbs.rootMm[0] * MM,
      rootOut: limbs.rootMm[1] * MM,
      length: limbs.lengthMm * MM,
      rootAngle: limbs.rootAngleDeg * DEGREE,
      recurve: limbs.recurveDeg * DEGREE,
      recurveFrom: limbs.recurveFrom,
      stiffnessTaper: limbs.stiffnessTaper,
      massTaper: limbs.massTaper,
      mass: limbs.massG * GRAM,
    },
    braceHeight: bow.braceHeightMm * MM,
    drawLength: bow.drawLengthMm * MM,
    drawWeight: bow.drawWeightLbf * NEWTON_PER_LBF,
    stringWrap: bow.stringWrap,
  }
}

/** What a bow's limbs have been solved for. Kept by the limbs' own object, so an edit elsewhere costs nothing. */
interface Solved {
  readonly key: string
  readonly braced: LimbResult<BracedLimbs>
  last: { readonly draw: number; readonly state: LimbState } | null
}

const solvedFor = new WeakMap<RecurveBow["limbs"], Solved>()
/** The bow solved last, from which a nearby one is found faster. */
let nearest: BracedLimbs | undefined

/** The bow strung and scaled to its draw weight; solved once for the same numbers. */
export function bracedLimbs(bow: RecurveBow): LimbResult<BracedLimbs> {
  return solved(bow).braced
}

function solved(bow: RecurveBow): Solved {
  const key = [bow.braceHeightMm, bow.drawLengthMm, bow.drawWeightLbf, bow.stringWrap].join()
  const known = solvedFor.get(bow.limbs)
  if (known?.key === key) return known
  const found = solveBrace(limbSetup(bow), nearest)
  if (found.ok) nearest = found.value
  const fresh: Solved = { key, braced: found, last: null }
  solvedFor.set(bow.limbs, fresh)
  return fresh
}

/** The limbs' solved state at draw fraction `t`. */
export function limbState(bow: RecurveBow, t: number): LimbResult<LimbState> {
  const memo = solved(bow)
  if (!memo.braced.ok) return memo.braced
  const braced = memo.braced.value
  const { braceHeight, drawLength } = braced.setup
  if (t === 0) return success(braced.brace)
  if (t === 1) return success(braced.full)
  const draw = braceHeight + t * (drawLength - braceHeight)
  if (memo.last?.draw === draw) return success(memo.last.state)
  const state = solveDrawn(braced, draw, memo.last?.state)
  if (state.ok) memo.last = { draw, state: state.value }
  return state
}

/** The limbs at draw fraction `t`: both are one solution, mirrored in the centre line. */
export function recurvePlace(bow: RecurveBow, t: number): LimbResult<LimbPlace> {
  const found = limbState(bow, t)
  if (!found.ok) return found
  const state = found.value
  const middle = bow.centreLineMm * MM
  const upper = (point: PlanePoint): Vec3 => [point.forward, middle + point.out, 0]
  const lower = (point: PlanePoint): Vec3 => [point.forward, middle - point.out, 0]
  const mass = bow.limbs.massG * GRAM
  return success({
    drawFraction: t,
    draw: state.draw,
    holdForce: t === 0 ? 0 : state.drawForce,
    stringTension: state.stringTension,
    solids: [limbSolid(state, mass, upper, 1), limbSolid(state, mass, lower, -1)],
    stringEnds: [upper(state.contact), lower(state.contact)],
    curves: [state.nodes.map(upper), state.nodes.map(lower)],
  })
}

/** A limb is a curve in the bow's x-y plane: yy = ∫x², xx = ∫y², zz their sum, xy = -∫xy. */
function limbSolid(state: LimbState, mass: number, place: (point: PlanePoint) => Vec3, side: 1 | -1): Solid {
  const { forwardForward, forwardOut, outOut } = state.secondMoments
  return {
    mass,
    centre: place(state.centre),
    aboutCentre: {
      xx: mass * outOut,
      yy: mass * forwardForward,
      zz: mass * (forwardForward + outOut),
      xy: -side * mass * forwardOut,
      xz: 0,
      yz: 0,
    },
  }
}
