import { elementFields, field, type NumberField } from "../fields"

/** Every number of a kit, once; what a kit's piece shares with a part of the rig has that part's field. */

const pieces = field("pieces in the box", "count", 0, 60, { whole: true, step: 1, coarse: 5 })
const angle = (label: string, min: number, max: number) => ({
  from: field(`${label} from`, "angle", min, max, { step: 1, coarse: 5 }),
  to: field(`${label} to`, "angle", min, max, { step: 1, coarse: 5 }),
  step: field(`${label} in steps of`, "angle", 0.1, 90, { step: 1, coarse: 5 }),
})

export const kitFields = {
  rod: { count: pieces, ...elementFields.rod },
  extender: { count: pieces, ...elementFields.extender },
  vbar: {
    count: pieces,
    ...elementFields.vbar,
    splayDeg: angle("splay", -180, 180),
    droopDeg: angle("droop", -90, 90),
  },
  damper: { count: pieces, ...elementFields.damper },
  discs: {
    count: field("discs in the box", "count", 0, 120, { whole: true, step: 1, coarse: 5 }),
    eachG: elementFields.weights.eachG,
    outerMm: elementFields.weights.outerMm,
    thicknessMm: elementFields.weights.thicknessMm,
  },
} as const

/** Entries each list of a kit may have. */
export const MAX_KIT_ENTRIES = 40

/** The numbers of a search that are not the target of the scene. Turn resistance in kg·m². */
export const questionFields = {
  mostDiscs: field("discs on one stack at most", "count", 0, 20, { whole: true, step: 1, coarse: 5, fallback: 8 }),
  count: field("setups listed", "count", 1, 200, { whole: true, step: 1, coarse: 10, fallback: 20 }),
  reachForwardMm: field("rig forward of the grip at most", "length", 0, 5000, { step: 5, coarse: 50 }),
  reachSideMm: field("rig to either side at most", "length", 0, 5000, { step: 5, coarse: 50 }),
  pitchLeast: field("pitch resistance at least", "inertia", 0, 100, { step: 0.01, coarse: 0.1 }),
  yawLeast: field("yaw resistance at least", "inertia", 0, 100, { step: 0.01, coarse: 0.1 }),
  rollLeast: field("roll resistance at least", "inertia", 0, 100, { step: 0.001, coarse: 0.01 }),
} as const satisfies Record<string, NumberField>
