/** Scene documents for tests, as a file would hold them. Every number is invented; few coincide with another. */

export type Document = Record<string, unknown>

/** A compound with required keys only: everything else takes its default. */
export const smallestDocument = (): Document => ({
  format: "bow-balance-bench",
  version: 1,
  name: "smallest",
  bow: {
    kind: "compound",
    riser: { massG: 1700, centreMm: [13, 7, 3], gyrationMm: [170, 50, 165] },
    limbs: { massG: 310, centreMm: [-23, 340], drawnShiftMm: [-31, -19] },
    letOffPercent: 65,
    centreLineMm: 17,
    string: { massG: 11 },
    braceHeightMm: 190,
    drawLengthMm: 690,
    drawWeightLbf: 47,
    nockHeightMm: 53,
    arrow: { massG: 23, lengthMm: 730 },
  },
})

export const recurveBow = (): Document => ({
  kind: "recurve",
  riser: { massG: 1230, centreMm: [11, -5, 2], gyrationMm: [150, 45, 152] },
  limbs: {
    massG: 167,
    rootMm: [3, 290],
    lengthMm: 590,
    rootAngleDeg: 13,
    recurveDeg: 57,
    recurveFrom: 0.62,
    stiffnessTaper: 0.37,
    massTaper: 0.53,
  },
  centreLineMm: 19,
  string: { massG: 7 },
  braceHeightMm: 220,
  drawLengthMm: 665,
  drawWeightLbf: 41,
  nockHeightMm: 47,
  arrow: { massG: 21, lengthMm: 735 },
})

export const mounts = (): Document => ({
  front: { atMm: [43, -71, 2] },
  upper: { atMm: [37, 230, 0], pitchDeg: 7 },
  lower: { atMm: [31, -260, 0], pitchDeg: -5 },
  back: { atMm: [-17, -83, 0], yawDeg: 180 },
})

export const rod = (more: Document = {}): Document => ({
  part: "rod",
  massG: 123,
  lengthMm: 710,
  outerMm: 18,
  innerMm: 15,
  ...more,
})
export const extender = (more: Document = {}): Document => ({
  part: "extender",
  massG: 61,
  lengthMm: 105,
  outerMm: 19,
  ...more,
})
export const damper = (more: Document = {}): Document => ({
  part: "damper",
  massG: 29,
  lengthMm: 31,
  outerMm: 27,
  ...more,
})
export const discs = (more: Document = {}): Document => ({
  part: "weights",
  count: 5,
  eachG: 28,
  outerMm: 25,
  thicknessMm: 6,
  ...more,
})
export const swing = (more: Document = {}): Document => ({
  part: "swing",
  stemLengthMm: 170,
  stemMassG: 19,
  bobMassG: 151,
  bobOuterMm: 32,
  bobLengthMm: 29,
  joint: "hinge",
  stopDeg: 70,
  ...more,
})
export const arm = (splayDeg: number, droopDeg: number, chain: Document[]): Document => ({ splayDeg, droopDeg, chain })
export const vbar = (more: Document = {}): Document => ({
  part: "vbar",
  massG: 97,
  lengthMm: 33,
  outerMm: 29,
  armOffsetMm: 21,
  ...more,
})

type Chains = Partial<Record<"front" | "upper" | "lower" | "back", Document[]>>

/** The smallest compound with all four mounts and these chains. */
export const rigged = (chains: Chains, more: Document = {}): Document => ({
  ...smallestDocument(),
  mounts: mounts(),
  rig: Object.entries(chains).map(([mount, chain]) => ({ mount, chain })),
  ...more,
})

/** Something on every mount, both arms, a part twice in one chain, and a swing weight. */
export const fullDocument = (): Document =>
  rigged(
    {
      front: [
        extender(),
        vbar({
          left: arm(35, 12, [rod({ massG: 57, lengthMm: 253 }), discs({ count: 7 })]),
          right: arm(41, 9, [rod({ massG: 59, lengthMm: 251 }), damper(), discs({ count: 3 })]),
        }),
        rod({ modulusGPa: 130, maxEndWeightG: 220 }),
        damper({ stiffnessNmPerRad: 37 }),
        discs(),
        discs({ count: 2, eachG: 57, label: "the brass ones" }),
      ],
      upper: [discs({ count: 1 })],
      lower: [extender({ lengthMm: 53 }), discs({ count: 0 })],
      back: [extender({ lengthMm: 41, massG: 23 }), swing()],
    },
    {
      name: "everything",
      notes: "Invented.",
      accessories: [
        { name: "sight", massG: 210, centreMm: [130, 125, 29], sizeMm: [150, 80, 43] },
        { name: "plunger", massG: 31, centreMm: [-3, 37, 11] },
        { name: "sight", massG: 13, centreMm: [170, 131, 27] },
      ],
      archer: { elbowElevationDeg: 2.5 },
      target: { forwardMm: [30, 70], upMm: [-90, 20], sideMm: [-5, 5], massMaxG: 3900, netLiftNm: [-0.5, 1.5] },
      pose: { draw: 0, slopeDeg: 15, cantDeg: 4 },
    },
  )
