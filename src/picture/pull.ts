import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import { along, subtract, unit, type Vec3 } from "../core/solids"
import { MM, nockPoint } from "../scene/assemble"
import { drawAt, type LimbPlace } from "../scene/limbPlace"
import type { Scene } from "../scene/schema"

/** The line of pull is drawn this far behind the nock, m: only the hand's end of the forearm, but clear of the string's knob. */
const RAY = 0.15
/** The nock height's knob stands this far up the string from the nock, m. */
const UP_STRING = 0.09

/** Where the nock is at a draw fraction, bow axes, m. It is drawn straight back. */
export const nockAt = ({ bow }: Scene, fraction: number): Vec3 => [-drawAt(bow, fraction), bow.nockHeightMm * MM, 0]

/** The far end of the line of pull from a nock, for a draw elbow so many degrees above the arrow line. */
export const pullEnd = (nock: Vec3, elbowDeg: number): Vec3 =>
  along(nock, [-Math.cos(elbowDeg * DEGREE), Math.sin(elbowDeg * DEGREE), 0], RAY)

/** The drawn line of pull, from the nock to where the elbow's knob stands; null at brace, where nobody pulls. */
export function pullLine({ bow, archer }: Scene, limbs: LimbPlace): readonly [Vec3, Vec3] | null {
  if (limbs.drawFraction === 0) return null
  const nock = nockPoint(bow, limbs)
  return [nock, pullEnd(nock, archer.elbowElevationDeg)]
}

/** A place on the string's upper half that goes up and down with a nock of this height. */
export function onString({ stringEnds, draw }: LimbPlace, nockHeightMm: number): Vec3 {
  const nock: Vec3 = [-draw, nockHeightMm * MM, 0]
  return along(nock, unit(subtract(stringEnds[0], nock)), UP_STRING)
}
