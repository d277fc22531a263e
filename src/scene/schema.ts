/**
 * The scene file, version 1, as a validator. Ranges and defaults come from `fields.ts`; this file only
 * says which keys stand where. Strict everywhere: an unknown key is an error. Error wording is in
 * `errors.ts`; the rules between fields are in `relations.ts`.
 */
import * as z from "zod/mini"
import {
  accessoryFields,
  archerFields,
  armFields,
  bowFields,
  compoundLimbFields,
  elementFields,
  gyrationMm,
  MAX_ACCESSORIES,
  MAX_CHAIN,
  mountFields,
  placeMm,
  poseFields,
  recurveLimbFields,
  sizeMm,
  targetFields,
} from "./fields"
import { measuredKeys } from "./measure/schema"
import { choiceMessage, defaulted, needed, optional, range, text, triple } from "./schemaNumbers"

export { defaulted, needed, optional, text } from "./schemaNumbers"

const riser = z.strictObject({
  massG: needed(bowFields.riserMassG),
  centreMm: triple(placeMm),
  gyrationMm: triple(gyrationMm),
})
const string = z.strictObject({ massG: needed(bowFields.stringMassG) })
const arrow = z.strictObject({ massG: needed(bowFields.arrowMassG), lengthMm: needed(bowFields.arrowLengthMm) })

const recurveLimbs = z.strictObject({
  massG: needed(recurveLimbFields.massG),
  rootMm: z.tuple([needed(recurveLimbFields.rootForwardMm), needed(recurveLimbFields.rootOutMm)]),
  lengthMm: needed(recurveLimbFields.lengthMm),
  rootAngleDeg: needed(recurveLimbFields.rootAngleDeg),
  recurveDeg: needed(recurveLimbFields.recurveDeg),
  recurveFrom: needed(recurveLimbFields.recurveFrom),
  stiffnessTaper: needed(recurveLimbFields.stiffnessTaper),
  massTaper: needed(recurveLimbFields.massTaper),
})

const compoundLimbs = z.strictObject({
  massG: needed(compoundLimbFields.massG),
  centreMm: z.tuple([needed(compoundLimbFields.forwardMm), needed(compoundLimbFields.outMm)]),
  drawnShiftMm: z.tuple([needed(compoundLimbFields.shiftForwardMm), needed(compoundLimbFields.shiftOutMm)]),
  gyrationMm: z._default(triple(gyrationMm), [0, 0, 0]),
})

const anyBow = {
  hand: z._default(z.enum(["right", "left"]), "right"),
  riser,
  centreLineMm: needed(bowFields.centreLineMm),
  string,
  braceHeightMm: needed(bowFields.braceHeightMm),
  drawLengthMm: needed(bowFields.drawLengthMm),
  drawWeightLbf: needed(bowFields.drawWeightLbf),
  nockHeightMm: needed(bowFields.nockHeightMm),
  arrow,
}
const bow = z.discriminatedUnion(
  "kind",
  [
    z.strictObject({
      kind: z.literal("recurve"),
      ...anyBow,
      limbs: recurveLimbs,
      stringWrap: z._default(z.boolean(), false),
    }),
    z.strictObject({
      kind: z.literal("compound"),
      ...anyBow,
      limbs: compoundLimbs,
      letOffPercent: needed(bowFields.letOffPercent),
    }),
  ],
  { error: choiceMessage("kind", ["recurve", "compound"]) },
)

const accessory = z.strictObject({
  name: z.string().check(z.minLength(1), z.maxLength(120)),
  massG: needed(accessoryFields.massG),
  centreMm: triple(placeMm),
  sizeMm: z.optional(triple(sizeMm)),
})

const mount = z.strictObject({
  atMm: triple(placeMm),
  pitchDeg: defaulted(mountFields.pitchDeg),
  yawDeg: defaulted(mountFields.yawDeg),
})
const mountName = z.enum(["front", "upper", "lower", "back"])

const label = z.optional(text(120))
/** The keys of an extender, and those a rod and a damper share with it. */
export const tube = (f: (typeof elementFields)["extender"]) => ({
  label,
  massG: needed(f.massG),
  lengthMm: needed(f.lengthMm),
  outerMm: needed(f.outerMm),
  innerMm: defaulted(f.innerMm),
  modulusGPa: optional(f.modulusGPa),
})
const extender = z.strictObject({ part: z.literal("extender"), ...tube(elementFields.extender) })
const rod = z.strictObject({
  part: z.literal("rod"),
  ...tube(elementFields.rod),
  maxEndWeightG: optional(elementFields.rod.maxEndWeightG),
})
const damper = z.strictObject({
  part: z.literal("damper"),
  ...tube(elementFields.damper),
  stiffnessNmPerRad: optional(elementFields.damper.stiffnessNmPerRad),
})
const weights = z.strictObject({
  part: z.literal("weights"),
  label,
  count: needed(elementFields.weights.count),
  eachG: needed(elementFields.weights.eachG),
  outerMm: needed(elementFields.weights.outerMm),
  thicknessMm: needed(elementFields.weights.thicknessMm),
})
const swing = z.strictObject({
  part: z.literal("swing"),
  label,
  stemLengthMm: needed(elementFields.swing.stemLengthMm),
  stemMassG: needed(elementFields.swing.stemMassG),
  bobMassG: needed(elementFields.swing.bobMassG),
  bobOuterMm: needed(elementFields.swing.bobOuterMm),
  bobLengthMm: needed(elementFields.swing.bobLengthMm),
  joint: z.enum(["hinge", "ball"]),
  stopDeg: needed(elementFields.swing.stopDeg),
  frictionNmm: defaulted(elementFields.swing.frictionNmm),
  damping: defaulted(elementFields.swing.damping),
})

/** Inside an arm hang the same parts, but no second V-bar. */
const armElement = z.discriminatedUnion("part", [extender, rod, damper, weights, swing], {
  error: choiceMessage("part", ["extender", "rod", "damper", "weights", "swing"]),
})
const arm = z.strictObject({
  splayDeg: needed(armFields.splayDeg),
  droopDeg: needed(armFields.droopDeg),
  chain: z._default(z.array(armElement).check(z.maxLength(MAX_CHAIN)), []),
})
const vbar = z.strictObject({
  part: z.literal("vbar"),
  label,
  massG: needed(elementFields.vbar.massG),
  lengthMm: needed(elementFields.vbar.lengthMm),
  outerMm: needed(elementFields.vbar.outerMm),
  armOffsetMm: needed(elementFields.vbar.armOffsetMm),
  left: z.optional(arm),
  right: z.optional(arm),
})
const element = z.discriminatedUnion("part", [extender, rod, damper, weights, swing, vbar], {
  error: choiceMessage("part", ["extender", "rod", "damper", "weights", "swing", "vbar"]),
})

const rig = z
  .array(z.strictObject({ mount: mountName, chain: z._default(z.array(element).check(z.maxLength(MAX_CHAIN)), []) }))
  .check(z.maxLength(4))

export const sceneSchema = z.strictObject({
  format: z.literal("bow-balance-bench"),
  version: z.literal(1),
  name: z.string().check(z.maxLength(200)),
  notes: z._default(text(20_000), ""),
  bow,
  accessories: z._default(z.array(accessory).check(z.maxLength(MAX_ACCESSORIES)), []),
  mounts: z._default(
    z.strictObject({
      front: z.optional(mount),
      upper: z.optional(mount),
      lower: z.optional(mount),
      back: z.optional(mount),
    }),
    {},
  ),
  rig: z._default(rig, []),
  archer: z._default(z.strictObject({ elbowElevationDeg: defaulted(archerFields.elbowElevationDeg) }), {
    elbowElevationDeg: archerFields.elbowElevationDeg.fallback ?? 0,
  }),
  target: z._default(
    z.strictObject({
      forwardMm: range(targetFields.forwardMm),
      upMm: range(targetFields.upMm),
      sideMm: range(targetFields.sideMm),
      massMaxG: optional(targetFields.massMaxG),
      netLiftNm: range(targetFields.netLiftNm),
    }),
    {},
  ),
  pose: z._default(
    z.strictObject({
      draw: defaulted(poseFields.draw),
      slopeDeg: defaulted(poseFields.slopeDeg),
      cantDeg: defaulted(poseFields.cantDeg),
    }),
    { draw: 0, slopeDeg: 0, cantDeg: 0 },
  ),
  ...measuredKeys(rig),
})

/** A whole valid scene with every default filled in. */
export type Scene = z.output<typeof sceneSchema>
export type Bow = Scene["bow"]
export type RecurveBow = Extract<Bow, { kind: "recurve" }>
export type CompoundBow = Extract<Bow, { kind: "compound" }>
export type Accessory = Scene["accessories"][number]
export type MountName = z.output<typeof mountName>
export type Mount = z.output<typeof mount>
export type RigEntry = Scene["rig"][number]
export type Element = z.output<typeof element>
export type ArmElement = z.output<typeof armElement>
export type Arm = z.output<typeof arm>
export type PartOf<K extends Element["part"]> = Extract<Element, { part: K }>
export type Target = Scene["target"]
export type Pose = Scene["pose"]
export type Measurement = NonNullable<Scene["measurements"]>[number]
export type MeasurementOf<K extends Measurement["kind"]> = Extract<Measurement, { kind: K }>
export type Tried = NonNullable<Scene["log"]>[number]
