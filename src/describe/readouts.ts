import type { Figures } from "../scene/figures"
import { readout as words } from "../words/readout"
import type { Shown } from "./format"

/** One live number of the page: the report's key for it, its name, what it measures and where it comes from. */
export interface ReadoutInfo {
  readonly label: string
  readonly quantity: Shown
  /** In the report's unit; null where this scene has no such number. */
  readonly of: (figures: Figures) => number | null
}

const info = (label: string, quantity: Shown, of: ReadoutInfo["of"]): ReadoutInfo => ({ label, quantity, of })

/** Every number shown live, by its report key. */
export const readouts = {
  massG: info(words.mass, "mass", (f) => f.massG),
  "centreMm.forward": info(words.forward, "length", (f) => f.centreMm[0]),
  "centreMm.up": info(words.up, "length", (f) => f.centreMm[1]),
  "centreMm.side": info(words.side, "length", (f) => f.centreMm[2]),
  armForwardMm: info(words.arm, "length", (f) => f.armForwardMm),
  armSideMm: info(words.armSide, "length", (f) => f.armSideMm),
  noseDownNm: info(words.noseDown, "moment", (f) => f.noseDownNm),
  cantRightNm: info(words.cant, "moment", (f) => f.cantRightNm),
  holdForceN: info(words.fingers, "newtons", (f) => f.holdForceN),
  "inertiaGrip.pitch": info(words.pitch, "inertia", (f) => f.inertiaGrip[2][2]),
  "inertiaGrip.yaw": info(words.yaw, "inertia", (f) => f.inertiaGrip[1][1]),
  "inertiaGrip.roll": info(words.roll, "inertia", (f) => f.inertiaGrip[0][0]),
  pitchInertiaFree: info(words.free, "inertia", (f) => f.pitchInertiaFree ?? null),
  "principal.0": info(words.smallest, "inertia", (f) => f.principal[0]),
  "principal.1": info(words.middle, "inertia", (f) => f.principal[1]),
  "principal.2": info(words.largest, "inertia", (f) => f.principal[2]),
  "stripped.massG": info(words.stripped, "mass", (f) => f.stripped.massG),
  "fullDraw.netLiftNm": info(words.net, "moment", (f) => f.fullDraw.netLiftNm),
  "fullDraw.liftNm": info(words.lift, "moment", (f) => f.fullDraw.liftNm),
  "fullDraw.noseDownNm": info(words.drawnNoseDown, "moment", (f) => f.fullDraw.noseDownNm),
  "fullDraw.balancedForwardMm": info(words.balanced, "length", (f) => f.fullDraw.balancedForwardMm),
  "fullDraw.centreMm.forward": info(words.drawnForward, "length", (f) => f.fullDraw.centreMm[0]),
  "fullDraw.gripShiftMm": info(words.gripShift, "length", (f) => f.fullDraw.gripShiftMm),
  "fullDraw.holdForceN": info(words.hold, "newtons", (f) => f.fullDraw.holdForceN),
  "fullDraw.massG": info(words.drawnMass, "mass", (f) => f.fullDraw.massG),
} as const satisfies Readonly<Record<string, ReadoutInfo>>

export type ReadoutKey = keyof typeof readouts
