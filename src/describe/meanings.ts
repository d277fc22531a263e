import { meanings as words } from "../words/meanings"
import type { ReadoutKey } from "./readouts"

/** What each live number is, in a sentence. Apart from their names, as the first view does without. */
export const meanings: Readonly<Record<ReadoutKey, string>> = {
  massG: words.mass,
  "centreMm.forward": words.forward,
  "centreMm.up": words.up,
  "centreMm.side": words.side,
  armForwardMm: words.arm,
  armSideMm: words.armSide,
  noseDownNm: words.noseDown,
  cantRightNm: words.cant,
  holdForceN: words.fingers,
  "inertiaGrip.pitch": words.pitch,
  "inertiaGrip.yaw": words.yaw,
  "inertiaGrip.roll": words.roll,
  pitchInertiaFree: words.free,
  "principal.0": words.principal,
  "principal.1": words.principal,
  "principal.2": words.principal,
  "stripped.massG": words.stripped,
  "fullDraw.netLiftNm": words.net,
  "fullDraw.liftNm": words.lift,
  "fullDraw.noseDownNm": words.drawnNoseDown,
  "fullDraw.balancedForwardMm": words.balanced,
  "fullDraw.centreMm.forward": words.drawnForward,
  "fullDraw.gripShiftMm": words.gripShift,
  "fullDraw.holdForceN": words.hold,
  "fullDraw.massG": words.drawnMass,
}
