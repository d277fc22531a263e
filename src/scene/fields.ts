/**
 * Every number a coach can edit, once: its name in plain words, what it measures, its range, its
 * steps and, where the file may leave it out, its default. The file schema, the error messages, the
 * number fields, the sliders and the handles all read this table, so a limit is stated in one place. What is only read
 * on sheets that come later stands beside it, in `measure/fields.ts`, so that the first view need not carry it.
 */

import { fieldNames as names } from "../words/fieldNames"

/** What a field measures; decides the unit it is shown in. File units: g, mm, degree, lbf, GPa, N·m/rad, N·mm. */
export type Quantity =
  | "mass"
  | "length"
  | "angle"
  | "force"
  | "count"
  | "fraction"
  | "percent"
  | "modulus"
  | "stiffness"
  | "friction"
  | "damping"
  | "moment"
  | "impulse"
  | "inertia"
  | "duration"

/** Entries a list of the file may have: far above any bow, low enough that a broken file cannot stall the page. */
export const MAX_ACCESSORIES = 60
export const MAX_CHAIN = 40

export interface NumberField {
  readonly label: string
  readonly quantity: Quantity
  readonly min: number
  readonly max: number
  /** Arrow-key step, in the file's unit. */
  readonly step: number
  /** Step with Shift held. */
  readonly coarse: number
  /** Whole numbers only. */
  readonly whole: boolean
  /** Value taken when the file leaves the key out; undefined where the key is required or may stay absent. */
  readonly fallback: number | undefined
  /** Whether the key may stay absent. */
  readonly optional?: boolean
}

interface Options {
  step?: number
  coarse?: number
  whole?: boolean
  fallback?: number
  optional?: boolean
}

export function field(label: string, quantity: Quantity, min: number, max: number, options: Options = {}): NumberField {
  const step = options.step ?? 1
  return {
    label,
    quantity,
    min,
    max,
    step,
    coarse: options.coarse ?? step * 10,
    whole: options.whole ?? false,
    fallback: options.fallback,
    optional: options.optional ?? false,
  }
}

const massG = (max: number, step: number, label = names.mass) => field(label, "mass", 0, max, { step })
const lengthMm = (max: number, step: number) => field(names.length, "length", 1, max, { step })
const outerMm = (label = names.outer) => field(label, "length", 1, 200, { step: 0.5, coarse: 5 })
const innerMm = field(names.inner, "length", 0, 199, { step: 0.5, coarse: 5, fallback: 0 })
const modulusGPa = field(names.modulus, "modulus", 0.001, 1000, { step: 1, optional: true })
const tubeFields = (mass: NumberField, length: NumberField) => ({
  massG: mass,
  lengthMm: length,
  outerMm: outerMm(),
  innerMm,
  modulusGPa,
})

/** A place on the bow, one axis of it. */
export const placeMm = field(names.place, "length", -2000, 2000, { step: 1 })
/** One edge of a box. */
export const sizeMm = field(names.size, "length", 0, 2000, { step: 1 })
/** One radius of gyration. */
export const gyrationMm = field(names.gyration, "length", 0, 1000, { step: 1 })

export const bowFields = {
  riserMassG: field(names.riserMass, "mass", 1, 10_000, { step: 10, coarse: 100 }),
  centreLineMm: field(names.centreLine, "length", -200, 200, { step: 1 }),
  stringMassG: field(names.stringMass, "mass", 0, 100, { step: 0.5, coarse: 5 }),
  braceHeightMm: field(names.brace, "length", 50, 500, { step: 1 }),
  drawLengthMm: field(names.drawLength, "length", 100, 1200, { step: 1 }),
  drawWeightLbf: field(names.drawWeight, "force", 1, 150, { step: 0.5, coarse: 5 }),
  nockHeightMm: field(names.nock, "length", -200, 300, { step: 1 }),
  letOffPercent: field(names.letOff, "percent", 0, 99, { step: 1, coarse: 5 }),
  arrowMassG: field(names.arrowMass, "mass", 0, 200, { step: 0.5, coarse: 5 }),
  arrowLengthMm: field(names.arrowLength, "length", 1, 1500, { step: 5, coarse: 50 }),
} as const

export const recurveLimbFields = {
  massG: field(names.limbMass, "mass", 1, 2000, { step: 1 }),
  rootForwardMm: field(names.rootForward, "length", -300, 300, { step: 1 }),
  rootOutMm: field(names.rootOut, "length", 10, 800, { step: 1 }),
  lengthMm: field(names.limbLength, "length", 50, 1500, { step: 1 }),
  rootAngleDeg: field(names.rootAngle, "angle", -60, 60, { step: 0.5, coarse: 5 }),
  recurveDeg: field(names.recurve, "angle", 0, 150, { step: 1 }),
  recurveFrom: field(names.recurveFrom, "fraction", 0, 0.95, { step: 0.01, coarse: 0.1 }),
  stiffnessTaper: field(names.stiffnessTaper, "fraction", 0.05, 5, { step: 0.01, coarse: 0.1 }),
  massTaper: field(names.massTaper, "fraction", 0, 5, { step: 0.01, coarse: 0.1 }),
} as const

export const compoundLimbFields = {
  massG: field(names.camLimbMass, "mass", 1, 3000, { step: 1 }),
  forwardMm: field(names.limbForward, "length", -500, 500, { step: 1 }),
  outMm: field(names.limbOut, "length", 10, 1000, { step: 1 }),
  shiftForwardMm: field(names.shiftForward, "length", -300, 300, { step: 1 }),
  shiftOutMm: field(names.shiftOut, "length", -300, 300, { step: 1 }),
} as const

export const accessoryFields = { massG: field(names.mass, "mass", 0, 5000, { step: 1 }) } as const

export const mountFields = {
  pitchDeg: field(names.tilt, "angle", -90, 90, { step: 1, fallback: 0 }),
  yawDeg: field(names.turn, "angle", -360, 360, { step: 1, fallback: 0 }),
} as const

export const elementFields = {
  extender: tubeFields(massG(2000, 1), lengthMm(1000, 5)),
  rod: {
    ...tubeFields(massG(2000, 1), lengthMm(2000, 5)),
    maxEndWeightG: field(names.rated, "mass", 0, 5000, { step: 1, optional: true }),
  },
  damper: {
    ...tubeFields(massG(1000, 1), lengthMm(300, 1)),
    stiffnessNmPerRad: field(names.bending, "stiffness", 0.001, 100_000, { step: 1, optional: true }),
  },
  weights: {
    count: field(names.discs, "count", 0, 60, { whole: true, step: 1, coarse: 5 }),
    eachG: field(names.disc, "mass", 0, 1000, { step: 1 }),
    outerMm: outerMm(),
    thicknessMm: field(names.thickness, "length", 0.1, 200, { step: 0.5, coarse: 5 }),
  },
  vbar: {
    massG: massG(2000, 1),
    lengthMm: lengthMm(300, 1),
    outerMm: outerMm(),
    armOffsetMm: field(names.armOffset, "length", 0, 200, { step: 1 }),
  },
  swing: {
    stemLengthMm: field(names.stemLength, "length", 1, 1000, { step: 5, coarse: 50 }),
    stemMassG: massG(1000, 1, names.stemMass),
    bobMassG: field(names.bobMass, "mass", 0, 3000, { step: 5, coarse: 50 }),
    bobOuterMm: outerMm(names.bobOuter),
    bobLengthMm: field(names.bobLength, "length", 0.1, 500, { step: 1 }),
    stopDeg: field(names.stop, "angle", 0, 180, { step: 1 }),
    frictionNmm: field(names.friction, "friction", 0, 10_000, { step: 1, fallback: 0 }),
    damping: field(names.damping, "damping", 0, 10, { step: 0.001, coarse: 0.01, fallback: 0 }),
  },
} as const

export const armFields = {
  splayDeg: field(names.splay, "angle", -180, 180, { step: 1, coarse: 5 }),
  droopDeg: field(names.droop, "angle", -90, 90, { step: 1, coarse: 5 }),
} as const

export const archerFields = {
  elbowElevationDeg: field(names.elbow, "angle", -45, 45, { step: 0.5, coarse: 5, fallback: 3 }),
} as const

export const targetFields = {
  forwardMm: field(names.forward, "length", -1000, 1000, { step: 1 }),
  upMm: field(names.up, "length", -1000, 1000, { step: 1 }),
  sideMm: field(names.right, "length", -500, 500, { step: 1 }),
  massMaxG: field(names.massMost, "mass", 1, 20_000, { step: 10, coarse: 100, optional: true }),
  netLiftNm: field(names.netLift, "moment", -100, 100, { step: 0.1, coarse: 1 }),
} as const

export const poseFields = {
  draw: field(names.draw, "fraction", 0, 1, { step: 0.01, coarse: 0.1, fallback: 0 }),
  slopeDeg: field(names.slope, "angle", -90, 90, { step: 1, coarse: 5, fallback: 0 }),
  cantDeg: field(names.cant, "angle", -90, 90, { step: 1, coarse: 5, fallback: 0 }),
} as const
