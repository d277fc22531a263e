/**
 * Random valid scenes. Every number is drawn from its field's whole range in src/scene/fields.ts, so that a range that
 * grows is tried as it grows; only what other fields bind (a bore inside its skin, a draw beyond the brace height) is
 * made to fit.
 */
import fc from "fast-check"
import {
  accessoryFields,
  archerFields,
  armFields,
  bowFields,
  compoundLimbFields,
  elementFields,
  mountFields,
  type NumberField,
  placeMm,
  poseFields,
  recurveLimbFields,
  sizeMm,
  targetFields,
} from "../../src/scene/fields"
import { readScene } from "../../src/scene/parse"
import { mountNames } from "../../src/scene/mountNames"
import type { Scene } from "../../src/scene/schema"

/** Tried on every run; another seed is another set of scenes. */
export const SEED = 20_357

/** A number of the field; never -0, which JSON writes as 0. */
export const number = ({ min, max, whole }: NumberField): fc.Arbitrary<number> =>
  whole ? fc.integer({ min, max }) : fc.double({ min, max, noNaN: true }).map((value) => value + 0)

const triple = (field: NumberField) => fc.tuple(number(field), number(field), number(field))

/** Radii of gyration of some body: those of any three squared extents. */
const gyration = fc
  .tuple(...[0, 1, 2].map(() => fc.double({ min: 0, max: 499_000, noNaN: true })))
  .map(([a, b, c]) => [Math.sqrt(b! + c!), Math.sqrt(a! + c!), Math.sqrt(a! + b!)])

const range = (field: NumberField) =>
  fc.tuple(number(field), number(field)).map(([a, b]) => [Math.min(a, b), Math.max(a, b)])

const text = (maxLength: number) =>
  fc.string({ maxLength, unit: "grapheme" }).filter((each) => each.length <= maxLength)

const tube = <Part extends "extender" | "rod" | "damper">(part: Part, optional: Record<string, NumberField>) => {
  const fields = elementFields[part]
  return fc
    .record(
      {
        part: fc.constant(part),
        label: text(12),
        massG: number(fields.massG),
        lengthMm: number(fields.lengthMm),
        outerMm: number(fields.outerMm),
        bore: fc.double({ min: 0, max: 0.99, noNaN: true }),
        ...Object.fromEntries(Object.entries(optional).map(([key, field]) => [key, number(field)])),
      },
      { requiredKeys: ["part", "massG", "lengthMm", "outerMm", "bore"] },
    )
    .map(({ bore, ...rest }) => ({ ...rest, innerMm: bore! * (rest as { outerMm: number }).outerMm }))
}
export const extender = tube("extender", { modulusGPa: elementFields.extender.modulusGPa })
export const rod = tube("rod", {
  modulusGPa: elementFields.rod.modulusGPa,
  maxEndWeightG: elementFields.rod.maxEndWeightG,
})
export const damper = tube("damper", { stiffnessNmPerRad: elementFields.damper.stiffnessNmPerRad })

export const weights = fc.record({
  part: fc.constant("weights"),
  count: number(elementFields.weights.count),
  eachG: number(elementFields.weights.eachG),
  outerMm: number(elementFields.weights.outerMm),
  thicknessMm: number(elementFields.weights.thicknessMm),
})

export const swing = fc.record({
  part: fc.constant("swing"),
  stemLengthMm: number(elementFields.swing.stemLengthMm),
  stemMassG: number(elementFields.swing.stemMassG),
  bobMassG: number(elementFields.swing.bobMassG),
  bobOuterMm: number(elementFields.swing.bobOuterMm),
  bobLengthMm: number(elementFields.swing.bobLengthMm),
  joint: fc.constantFrom("hinge", "ball"),
  stopDeg: number(elementFields.swing.stopDeg),
  frictionNmm: number(elementFields.swing.frictionNmm),
  damping: number(elementFields.swing.damping),
})

const armElement = fc.oneof(extender, rod, damper, weights, swing)
const arm = fc.record({
  splayDeg: number(armFields.splayDeg),
  droopDeg: number(armFields.droopDeg),
  chain: fc.array(armElement, { maxLength: 3 }),
})
const vbar = fc.record(
  {
    part: fc.constant("vbar"),
    massG: number(elementFields.vbar.massG),
    lengthMm: number(elementFields.vbar.lengthMm),
    outerMm: number(elementFields.vbar.outerMm),
    armOffsetMm: number(elementFields.vbar.armOffsetMm),
    left: arm,
    right: arm,
  },
  { requiredKeys: ["part", "massG", "lengthMm", "outerMm", "armOffsetMm"] },
)
const chain = fc.array(fc.oneof(extender, rod, damper, weights, swing, vbar), { maxLength: 5 })

const anyBow = {
  hand: fc.constantFrom("right", "left"),
  riser: fc.record({ massG: number(bowFields.riserMassG), centreMm: triple(placeMm), gyrationMm: gyration }),
  centreLineMm: number(bowFields.centreLineMm),
  string: fc.record({ massG: number(bowFields.stringMassG) }),
  braceHeightMm: number(bowFields.braceHeightMm),
  beyondBrace: fc.double({ min: 1, max: 600, noNaN: true }),
  drawWeightLbf: number(bowFields.drawWeightLbf),
  nockHeightMm: number(bowFields.nockHeightMm),
  arrow: fc.record({ massG: number(bowFields.arrowMassG), lengthMm: number(bowFields.arrowLengthMm) }),
}
const drawn = <B extends { braceHeightMm: number; beyondBrace: number }>({ beyondBrace, ...bow }: B) => ({
  ...bow,
  drawLengthMm: Math.max(bowFields.drawLengthMm.min, bow.braceHeightMm + beyondBrace),
})

const compoundBow = fc
  .record({
    kind: fc.constant("compound"),
    ...anyBow,
    limbs: fc.record({
      massG: number(compoundLimbFields.massG),
      centreMm: fc.tuple(number(compoundLimbFields.forwardMm), number(compoundLimbFields.outMm)),
      drawnShiftMm: fc.tuple(number(compoundLimbFields.shiftForwardMm), number(compoundLimbFields.shiftOutMm)),
      gyrationMm: gyration,
    }),
    letOffPercent: number(bowFields.letOffPercent),
  })
  .map(drawn)

/** Valid as a file; whether its limbs can take the shape is another question. */
const recurveBow = fc
  .record({
    kind: fc.constant("recurve"),
    ...anyBow,
    limbs: fc.record({
      massG: number(recurveLimbFields.massG),
      rootMm: fc.tuple(number(recurveLimbFields.rootForwardMm), number(recurveLimbFields.rootOutMm)),
      lengthMm: number(recurveLimbFields.lengthMm),
      rootAngleDeg: number(recurveLimbFields.rootAngleDeg),
      recurveDeg: number(recurveLimbFields.recurveDeg),
      recurveFrom: number(recurveLimbFields.recurveFrom),
      stiffnessTaper: number(recurveLimbFields.stiffnessTaper),
      massTaper: number(recurveLimbFields.massTaper),
    }),
    stringWrap: fc.boolean(),
  })
  .map(drawn)

/** A number from part of a field's range; outside the range it is a fault of this file, and refused when read. */
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Near the bows people shoot, where the limbs are known to take their shape. */
const shootableRecurve = recurveBow.chain((bow) =>
  fc
    .record({
      rootMm: fc.tuple(between(-10, 20), between(260, 320)),
      lengthMm: between(540, 640),
      rootAngleDeg: between(8, 16),
      recurveDeg: between(20, 60),
      recurveFrom: between(0.5, 0.8),
      stiffnessTaper: between(0.25, 0.6),
      massTaper: between(0.3, 1),
      braceHeightMm: between(200, 235),
      drawLengthMm: between(560, 700),
      drawWeightLbf: between(15, 60),
    })
    .map(({ braceHeightMm, drawLengthMm, drawWeightLbf, ...limbs }) => ({
      ...bow,
      braceHeightMm,
      drawLengthMm,
      drawWeightLbf,
      limbs: { massG: bow.limbs.massG, ...limbs },
      stringWrap: false,
    })),
)

const mount = fc.record({
  atMm: triple(placeMm),
  pitchDeg: number(mountFields.pitchDeg),
  yawDeg: number(mountFields.yawDeg),
})

const document = (bow: fc.Arbitrary<object>) =>
  fc.record({
    format: fc.constant("bow-balance-bench"),
    version: fc.constant(1),
    name: text(20),
    notes: text(40),
    bow,
    accessories: fc.array(
      fc.record(
        {
          name: text(8).filter((name) => name.length > 0),
          massG: number(accessoryFields.massG),
          centreMm: triple(placeMm),
          sizeMm: triple(sizeMm),
        },
        { requiredKeys: ["name", "massG", "centreMm"] },
      ),
      { maxLength: 4 },
    ),
    mounts: fc.record({ front: mount, upper: mount, lower: mount, back: mount }),
    rig: fc
      .tuple(fc.subarray([...mountNames]), fc.array(chain, { minLength: 4, maxLength: 4 }))
      .map(([carrying, chains]) => carrying.map((name, index) => ({ mount: name, chain: chains[index]! }))),
    archer: fc.record({ elbowElevationDeg: number(archerFields.elbowElevationDeg) }),
    target: fc.record(
      {
        forwardMm: range(targetFields.forwardMm),
        upMm: range(targetFields.upMm),
        sideMm: range(targetFields.sideMm),
        massMaxG: number(targetFields.massMaxG),
        netLiftNm: range(targetFields.netLiftNm),
      },
      { requiredKeys: [] },
    ),
    pose: fc.record({
      draw: fc.oneof(fc.constantFrom(0, 1), number(poseFields.draw)),
      slopeDeg: number(poseFields.slopeDeg),
      cantDeg: number(poseFields.cantDeg),
    }),
  })

/** Reading is part of the arbitrary: a document it makes that is refused is a fault of one of the two. */
function read(made: unknown): Scene {
  const scene = readScene(made)
  if (!scene.ok) throw new Error(JSON.stringify(scene.errors))
  return scene.value
}

/** Scenes of compounds, whose evaluation never fails. */
export const compoundScene: fc.Arbitrary<Scene> = document(compoundBow).map(read)

/** Scenes of recurves near those people shoot. */
export const recurveScene: fc.Arbitrary<Scene> = document(shootableRecurve).map(read)

/** Any valid file, recurves whose limbs cannot be bent included. */
export const anyScene: fc.Arbitrary<Scene> = document(fc.oneof(compoundBow, recurveBow)).map(read)
