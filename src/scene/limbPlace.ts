import type { LimbResult } from "../core/limbs"
import { gyrating, type Solid, type Vec3 } from "../core/solids"
import { GRAM, MM } from "./assemble/parts"
import { compoundForce } from "./compoundDraw"
import { recurvePlace } from "./recurvePlace"
import { success } from "./result"
import type { Bow, CompoundBow } from "./schema"

/** Where the limbs and the string's ends are at one draw, and what the string does. SI, bow axes. */
export interface LimbPlace {
  /** 0 brace … 1 full draw. */
  readonly drawFraction: number
  /** From the grip pivot back to the string's middle, m. */
  readonly draw: number
  /** Force of the fingers, N; 0 at brace. */
  readonly holdForce: number
  /** N; null for a compound, whose cables are not modelled. */
  readonly stringTension: number | null
  /** Upper and lower limb. */
  readonly solids: readonly [Solid, Solid]
  /** Upper and lower end of the string. */
  readonly stringEnds: readonly [Vec3, Vec3]
  /** Each limb's centre line from root to tip; null for a compound, whose limbs are bodies. */
  readonly curves: readonly [readonly Vec3[], readonly Vec3[]] | null
}

/** A bow's limbs braced, at full draw, and at the draw asked for last. */
interface Placed {
  readonly ends: Map<number, LimbResult<LimbPlace>>
  last: { readonly t: number; readonly place: LimbResult<LimbPlace> } | null
}

const placed = new WeakMap<Bow, Placed>()

/**
 * The limbs at draw fraction `t` (0 … 1). The same object for the same bow and draw, so that whoever draws or weighs
 * them sees that nothing has changed while the rig is being edited.
 */
export function placeLimbs(bow: Bow, t: number): LimbResult<LimbPlace> {
  const kept = placed.get(bow) ?? { ends: new Map(), last: null }
  placed.set(bow, kept)
  const known = kept.ends.get(t) ?? (kept.last?.t === t ? kept.last.place : undefined)
  if (known !== undefined) return known
  const place = bow.kind === "compound" ? success(compoundPlace(bow, t)) : recurvePlace(bow, t)
  if (t === 0 || t === 1) kept.ends.set(t, place)
  else kept.last = { t, place }
  return place
}

/** Draw from the grip pivot at draw fraction t, m. */
export const drawAt = (bow: Bow, t: number): number =>
  (bow.braceHeightMm + t * (bow.drawLengthMm - bow.braceHeightMm)) * MM

function compoundPlace(bow: CompoundBow, t: number): LimbPlace {
  const { limbs } = bow
  const forward = (limbs.centreMm[0] + t * limbs.drawnShiftMm[0]) * MM
  const out = (limbs.centreMm[1] + t * limbs.drawnShiftMm[1]) * MM
  const middle = bow.centreLineMm * MM
  const radii: Vec3 = [limbs.gyrationMm[0] * MM, limbs.gyrationMm[1] * MM, limbs.gyrationMm[2] * MM]
  const body = (y: number) => gyrating(limbs.massG * GRAM, [forward, y, 0], radii)
  const back = -bow.braceHeightMm * MM
  return {
    drawFraction: t,
    draw: drawAt(bow, t),
    holdForce: compoundForce(bow, t),
    stringTension: null,
    solids: [body(middle + out), body(middle - out)],
    stringEnds: [
      [back, middle + out, 0],
      [back, middle - out, 0],
    ],
    curves: null,
  }
}
