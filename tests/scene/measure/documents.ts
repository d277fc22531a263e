/** A compound that was measured and tried out, as a file would hold it. All numbers are invented. */
import { discs, type Document, fullDocument, rod } from "../documents"

export const rigThen = (): Document[] => [{ mount: "front", chain: [rod({ lengthMm: 530 }), discs({ count: 3 })] }]

export const readings = (): Document[] => [
  { kind: "scale", on: "bow", massG: 2617, errorG: 5, note: "kitchen scale", date: "2026-05-17" },
  { kind: "hang", on: "bow", atMm: [-190, 53, 0], pointErrorMm: 3, slopeDeg: 23, cantDeg: -1.5, errorDeg: 0.7 },
  { kind: "hang", on: "rigged", rig: rigThen(), atMm: [310, -71, 2], slopeDeg: -7, excluded: true },
  { kind: "swing", on: "riser", atMm: [37, 230, 0], axis: "pitch", count: 20, seconds: 21.7, amplitudeDeg: 11 },
  { kind: "twist", on: "bow", axis: "yaw", count: 10, seconds: 17.3, errorSeconds: 0.2, lineMm: 1300, radiusMm: 150 },
]

export const tried = (): Document[] => [
  {
    date: "2026-05-17",
    name: "first",
    feel: "steady, slow",
    rating: 4,
    scores: [27, 25, 28],
    groupMm: 130,
    note: "windy",
    rig: rigThen(),
  },
  { rig: [] },
]

export const measuredDocument = (): Document => ({ ...fullDocument(), measurements: readings(), log: tried() })
