/** Kit documents for tests, as a file would hold them. Every number is invented; few coincide with another. */

type Entry = Record<string, unknown>

export const kitDocument = () => ({
  format: "bow-balance-bench-kit",
  version: 1,
  name: "test box",
  rods: [
    { name: "long", count: 2, use: "front", massG: 123, lengthMm: 710, outerMm: 18, innerMm: 15, maxEndWeightG: 220 },
    { name: "short", count: 3, massG: 57, lengthMm: 253, outerMm: 17 },
  ] as Entry[],
  extenders: [{ name: "extender", count: 1, massG: 61, lengthMm: 105, outerMm: 19 }] as Entry[],
  vbars: [
    {
      ...{ name: "turning", count: 1, massG: 97, lengthMm: 33, outerMm: 29, armOffsetMm: 21 },
      ...{ splayDeg: { from: 30, to: 50, step: 10 }, droopDeg: { from: -5, to: 10, step: 5 } },
    },
    {
      ...{ name: "fixed", count: 1, massG: 71, lengthMm: 31, outerMm: 27, armOffsetMm: 23 },
      ...{ splayDeg: { from: 41, to: 41 }, droopDeg: { from: 3, to: 3 } },
    },
  ] as Entry[],
  dampers: [{ name: "damper", count: 2, massG: 29, lengthMm: 31, outerMm: 27 }] as Entry[],
  discs: [
    { name: "steel", count: 7, eachG: 28, outerMm: 25, thicknessMm: 6 },
    { name: "brass, wide", count: 5, eachG: 57, outerMm: 32, thicknessMm: 9 },
  ] as Entry[],
})
