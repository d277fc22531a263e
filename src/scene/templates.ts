import { partWords } from "../words/partWords"
import type { Accessory, Arm, ArmElement, Element, Mount, MountName, Scene } from "./schema"

/**
 * What a newly added part looks like before anyone types: middling sizes of the trade (common practice, no source),
 * all invented.
 */
export const newElement: { readonly [K in Element["part"]]: Extract<Element, { part: K }> } = {
  extender: { part: "extender", massG: 55, lengthMm: 100, outerMm: 20, innerMm: 16 },
  rod: { part: "rod", massG: 110, lengthMm: 700, outerMm: 18, innerMm: 16 },
  damper: { part: "damper", massG: 25, lengthMm: 20, outerMm: 25, innerMm: 0 },
  weights: { part: "weights", count: 3, eachG: 28, outerMm: 26, thicknessMm: 7 },
  vbar: { part: "vbar", massG: 90, lengthMm: 30, outerMm: 28, armOffsetMm: 20 },
  swing: {
    part: "swing",
    stemLengthMm: 120,
    stemMassG: 15,
    bobMassG: 120,
    bobOuterMm: 30,
    bobLengthMm: 22,
    joint: "hinge",
    stopDeg: 80,
    frictionNmm: 0,
    damping: 0,
  },
}

/** A side rod is shorter than a front rod. */
export const newSideRod: ArmElement = { part: "rod", massG: 60, lengthMm: 250, outerMm: 16, innerMm: 14 }

export const newArm = (): Arm => ({
  splayDeg: 40,
  droopDeg: 0,
  chain: [{ ...newSideRod }, { ...newElement.weights }],
})

export const newMount: Readonly<Record<MountName, Mount>> = {
  front: { atMm: [40, -70, 0], pitchDeg: 0, yawDeg: 0 },
  upper: { atMm: [40, 170, 0], pitchDeg: 0, yawDeg: 0 },
  lower: { atMm: [40, -150, 0], pitchDeg: 0, yawDeg: 0 },
  back: { atMm: [-15, -80, 0], pitchDeg: 0, yawDeg: 180 },
}

export const newAccessory = (name: string): Accessory => ({ name, massG: 100, centreMm: [60, 80, 0] })

/** The scene behind "New": a plain recurve with an empty rig, invented. */
export const newScene = (): Scene => ({
  format: "bow-balance-bench",
  version: 1,
  name: partWords.newBow,
  notes: "",
  bow: {
    kind: "recurve",
    hand: "right",
    riser: { massG: 1200, centreMm: [18, -5, 0], gyrationMm: [165, 35, 165] },
    centreLineMm: 20,
    string: { massG: 7 },
    braceHeightMm: 220,
    drawLengthMm: 665,
    drawWeightLbf: 36,
    nockHeightMm: 48,
    arrow: { massG: 20, lengthMm: 740 },
    limbs: {
      massG: 160,
      rootMm: [0, 290],
      lengthMm: 580,
      rootAngleDeg: 12,
      recurveDeg: 55,
      recurveFrom: 0.6,
      stiffnessTaper: 0.35,
      massTaper: 0.5,
    },
    stringWrap: false,
  },
  accessories: [],
  mounts: {
    front: { ...newMount.front },
    upper: { ...newMount.upper },
    lower: { ...newMount.lower },
    back: { ...newMount.back },
  },
  rig: [],
  archer: { elbowElevationDeg: 3 },
  target: { forwardMm: [40, 80] },
  pose: { draw: 0, slopeDeg: 0, cantDeg: 0 },
})
