import { kitNames as names } from "../../words/kitNames"
import { elementFields, field, type NumberField } from "../fields"

/** Every number of a kit, once; what a kit's piece shares with a part of the rig has that part's field. */

const pieces = field(names.pieces, "count", 0, 60, { whole: true, step: 1, coarse: 5 })
const angle = (from: string, to: string, step: string, min: number, max: number) => ({
  from: field(from, "angle", min, max, { step: 1, coarse: 5 }),
  to: field(to, "angle", min, max, { step: 1, coarse: 5 }),
  step: field(step, "angle", 0.1, 90, { step: 1, coarse: 5 }),
})

export const kitFields = {
  rod: { count: pieces, ...elementFields.rod },
  extender: { count: pieces, ...elementFields.extender },
  vbar: {
    count: pieces,
    ...elementFields.vbar,
    splayDeg: angle(names.splayFrom, names.splayTo, names.splayStep, -180, 180),
    droopDeg: angle(names.droopFrom, names.droopTo, names.droopStep, -90, 90),
  },
  damper: { count: pieces, ...elementFields.damper },
  discs: {
    count: field(names.discs, "count", 0, 120, { whole: true, step: 1, coarse: 5 }),
    eachG: elementFields.weights.eachG,
    outerMm: elementFields.weights.outerMm,
    thicknessMm: elementFields.weights.thicknessMm,
  },
} as const

/** Entries each list of a kit may have. */
export const MAX_KIT_ENTRIES = 40

/** The numbers of a search that are not the target of the scene. Turn resistance in kg·m². */
export const questionFields = {
  mostDiscs: field(names.mostDiscs, "count", 0, 20, { whole: true, step: 1, coarse: 5, fallback: 8 }),
  count: field(names.count, "count", 1, 200, { whole: true, step: 1, coarse: 10, fallback: 20 }),
  reachForwardMm: field(names.reachForward, "length", 0, 5000, { step: 5, coarse: 50 }),
  reachSideMm: field(names.reachSide, "length", 0, 5000, { step: 5, coarse: 50 }),
  pitchLeast: field(names.pitch, "inertia", 0, 100, { step: 0.01, coarse: 0.1 }),
  yawLeast: field(names.yaw, "inertia", 0, 100, { step: 0.01, coarse: 0.1 }),
  rollLeast: field(names.roll, "inertia", 0, 100, { step: 0.001, coarse: 0.01 }),
} as const satisfies Record<string, NumberField>
