import { type Mat3, type MassProperties, type Tensor, tensorMatrix, type Vec3 } from "../core/solids"
import type { Evaluation, WeighedPart } from "./evaluate"

/**
 * The numbers of a scene in the report's keys and units: g, mm, N, N·m, kg·m². This is what `report --json`
 * prints and what every live readout on the page is named after.
 */
export interface Figures {
  readonly massG: number
  readonly centreMm: Vec3
  readonly inertiaGrip: Mat3
  readonly inertiaCentre: Mat3
  readonly principal: Vec3
  readonly armForwardMm: number
  readonly armSideMm: number
  readonly noseDownNm: number
  readonly cantRightNm: number
  readonly holdForceN: number
  /** With a swing weight only. */
  readonly pitchInertiaFree?: number
  readonly stripped: { readonly massG: number; readonly centreMm: Vec3; readonly inertiaGrip: Mat3 }
  readonly parts: readonly PartFigures[]
  readonly fullDraw: FullDrawFigures
}

export interface PartFigures {
  readonly path: string
  readonly massG: number
  readonly centreMm: Vec3
  readonly noseDownNm: number
}

export interface FullDrawFigures {
  readonly holdForceN: number
  readonly liftNm: number
  readonly noseDownNm: number
  readonly netLiftNm: number
  readonly balancedForwardMm: number
  readonly gripShiftMm: number
  readonly centreMm: Vec3
  readonly massG: number
}

export const grams = (kg: number): number => kg * 1e3
export const millimetres = (r: Vec3): Vec3 => [r[0] * 1e3, r[1] * 1e3, r[2] * 1e3]
const matrix = (t: Tensor): Mat3 => tensorMatrix(t)

export function figuresOf(evaluation: Evaluation): Figures {
  const { now, principal, pitchInertiaFree, stripped, fullDraw } = evaluation
  return {
    ...bodyFigures(now),
    inertiaCentre: matrix(now.aboutCentre),
    principal: principal.moments,
    armForwardMm: now.armForward * 1e3,
    armSideMm: now.armSide * 1e3,
    noseDownNm: now.noseDown,
    cantRightNm: now.cantRight,
    holdForceN: now.limbs.holdForce,
    ...(pitchInertiaFree === null ? {} : { pitchInertiaFree }),
    stripped: bodyFigures(stripped),
    parts: now.parts.map(partFigures),
    fullDraw: {
      holdForceN: fullDraw.limbs.holdForce,
      liftNm: fullDraw.lift,
      noseDownNm: fullDraw.noseDown,
      netLiftNm: fullDraw.netLift,
      balancedForwardMm: fullDraw.balancedForward * 1e3,
      gripShiftMm: fullDraw.gripShift * 1e3,
      centreMm: millimetres(fullDraw.centre),
      massG: grams(fullDraw.mass),
    },
  }
}

const bodyFigures = (body: MassProperties) => ({
  massG: grams(body.mass),
  centreMm: millimetres(body.centre),
  inertiaGrip: matrix(body.aboutOrigin),
})

const partFigures = (part: WeighedPart): PartFigures => ({
  path: part.path,
  massG: grams(part.mass),
  centreMm: millimetres(part.centre),
  noseDownNm: part.noseDown,
})
