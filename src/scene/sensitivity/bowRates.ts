import {
  gyrationRates,
  lineRates,
  type MassMoments,
  momentsOf,
  type MovingPoint,
  movedRates,
  NO_MOMENTS,
  slenderRates,
  sumMoments,
} from "../../core/sensitivity"
import { add, along, gyrating, pointSolid, type Vec3, ZERO } from "../../core/solids"
import { GRAM, metres, MM, nockPoint } from "../assemble"
import type { LimbPlace } from "../limbPlace"
import type { Bow, CompoundBow } from "../schema"
import { AXES, GYRATION_AXES } from "../slots"
import { endRates, type LimbMotion, type LimbMotions, LIMBS_STILL, limbMassRates, limbPairRates } from "./limbMotion"
import { limbMotions } from "./limbMotions"
import { perGram, perMm, put, type Rates, UNIT_AXES, WEIGHS_NOTHING } from "./rates"

const FORWARD: Vec3 = [1, 0, 0]
const UP: Vec3 = [0, 1, 0]

/** Rates of the mass moments by every number of the bow, and by the draw, per file unit, with the limbs in `place`. */
export function bowRates(bow: Bow, place: LimbPlace, into: Rates): void {
  riserRates(bow, into)
  const motions = limbMotions(bow, place)
  const moved = (limb: LimbMotion, rest: Partial<Moved> = {}) => movedBow(bow, place, { ...STILL, limb, ...rest })
  for (const [name, limb] of Object.entries(motions.own)) into.set(`bow/limbs:${name}`, moved(limb))
  into.set("bow/limbs:massG", perGram(limbMassRates(place.solids)))
  if (bow.kind === "compound") limbGyrationRates(bow, place, into)
  const t = place.drawFraction
  put(into, "bow", {
    centreLineMm: perMm(moved(LIMBS_STILL, { up: 1 })),
    braceHeightMm: perMm(moved(motions.braceHeight, { nock: [t - 1, 0, 0] })),
    drawLengthMm: perMm(moved(motions.drawLength, { nock: [-t, 0, 0] })),
    drawWeightLbf: WEIGHS_NOTHING,
    letOffPercent: WEIGHS_NOTHING,
    nockHeightMm: perMm(moved(LIMBS_STILL, { nock: UP })),
  })
  into.set("bow/string:massG", perGram(movedString(bow, place, STILL, 0, 1)))
  put(into, "bow/arrow", arrowRates(bow, place))
  into.set("pose:draw", drawRates(bow, place, motions))
}

function riserRates({ riser }: Bow, into: Rates): void {
  const mass = riser.massG * GRAM
  const centre = metres(riser.centreMm)
  const body = momentsOf(pointSolid(mass, centre))
  into.set("bow/riser:massG", perGram(momentsOf(gyrating(1, centre, metres(riser.gyrationMm)))))
  AXES.forEach((axis, i) => {
    into.set(`bow/riser:centreMm.${axis}`, perMm(movedRates(body, UNIT_AXES[i] as Vec3)))
  })
  GYRATION_AXES.forEach((axis, i) => {
    into.set(`bow/riser:gyrationMm.${axis}`, perMm(gyrationRates(mass, (riser.gyrationMm[i] ?? 0) * MM, i)))
  })
}

function limbGyrationRates({ limbs }: CompoundBow, place: LimbPlace, into: Rates): void {
  const both = place.solids[0].mass + place.solids[1].mass
  GYRATION_AXES.forEach((axis, i) => {
    into.set(`bow/limbs:gyrationMm.${axis}`, perMm(gyrationRates(both, (limbs.gyrationMm[i] ?? 0) * MM, i)))
  })
}

/** What a change does to the bow, per unit: to its limbs, and how fast both rise and the nock moves (m per unit). */
interface Moved {
  readonly limb: LimbMotion
  readonly up: number
  readonly nock: Vec3
}
const STILL: Moved = { limb: LIMBS_STILL, up: 0, nock: ZERO }

function movedBow(bow: Bow, place: LimbPlace, moved: Moved): MassMoments {
  const arrow = momentsOf(pointSolid(bow.arrow.massG * GRAM, arrowMiddle(bow, place)))
  return sumMoments(
    limbPairRates(place.solids, moved.limb, moved.up),
    movedString(bow, place, moved, bow.string.massG * GRAM, 0),
    place.drawFraction > 0 ? movedRates(arrow, moved.nock) : NO_MOMENTS,
  )
}

/** The string's rates; it runs through the nock once drawn, and `fromNock` takes it there at brace too. */
function movedString(
  bow: Bow,
  place: LimbPlace,
  { limb, up, nock }: Moved,
  mass: number,
  massRate: number,
  fromNock = place.drawFraction > 0,
): MassMoments {
  const [upperRate, lowerRate] = endRates(limb, up)
  const upper: MovingPoint = { at: place.stringEnds[0], rate: upperRate }
  const lower: MovingPoint = { at: place.stringEnds[1], rate: lowerRate }
  const middle: MovingPoint = { at: nockPoint(bow, place), rate: nock }
  return sumMoments(...lineRates(mass, massRate, fromNock ? [upper, middle, lower] : [upper, lower]))
}

/**
 * Per whole of the draw fraction. At brace it is the first of the draw, string and limbs leaving their place; the
 * arrow, which counts from the first of the draw on, is a jump there and not part of the rate.
 */
function drawRates(bow: Bow, place: LimbPlace, motions: LimbMotions): MassMoments {
  const limb = motions.drawFraction
  const nock: Vec3 = [(bow.braceHeightMm - bow.drawLengthMm) * MM, 0, 0]
  if (place.drawFraction > 0) return movedBow(bow, place, { limb, up: 0, nock })
  return sumMoments(
    limbPairRates(place.solids, limb, 0),
    movedString(bow, place, { limb, up: 0, nock }, bow.string.massG * GRAM, 0, true),
  )
}

const arrowMiddle = (bow: Bow, place: LimbPlace): Vec3 =>
  along(nockPoint(bow, place), FORWARD, (bow.arrow.lengthMm * MM) / 2)

/** The arrow counts only once the bow is drawn. */
function arrowRates(bow: Bow, place: LimbPlace): { massG: MassMoments; lengthMm: MassMoments } {
  if (!(place.drawFraction > 0)) return { massG: NO_MOMENTS, lengthMm: NO_MOMENTS }
  const nock: MovingPoint = { at: nockPoint(bow, place), rate: ZERO }
  const point: MovingPoint = { at: add(nock.at, [bow.arrow.lengthMm * MM, 0, 0]), rate: FORWARD }
  return {
    massG: perGram(slenderRates(0, 1, nock, point)),
    lengthMm: perMm(slenderRates(bow.arrow.massG * GRAM, 0, nock, point)),
  }
}
