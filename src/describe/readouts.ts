import type { Figures } from "../scene/figures"
import type { Shown } from "./format"

/** One live number of the page: the report's key for it, its words, what it measures and where it comes from. */
export interface ReadoutInfo {
  readonly label: string
  /** One sentence for the person who asks what it is. */
  readonly meaning: string
  readonly quantity: Shown
  /** In the report's unit; null where this scene has no such number. */
  readonly of: (figures: Figures) => number | null
}

const info = (
  label: string,
  quantity: Shown,
  of: (figures: Figures) => number | null,
  meaning: string,
): ReadoutInfo => ({ label, quantity, of, meaning })

/** Every number shown live, by its report key. */
export const readouts = {
  massG: info("Mass", "mass", (f) => f.massG, "Bow, rig and, once drawn, the arrow."),
  "centreMm.forward": info(
    "Balance point ahead of grip",
    "length",
    (f) => f.centreMm[0],
    "Along the bow's own forward direction.",
  ),
  "centreMm.up": info(
    "Balance point above grip",
    "length",
    (f) => f.centreMm[1],
    "Along the riser; negative is below the grip.",
  ),
  "centreMm.side": info(
    "Balance point to the right",
    "length",
    (f) => f.centreMm[2],
    "As the archer sees it; negative is left.",
  ),
  armForwardMm: info(
    "Moment arm",
    "length",
    (f) => f.armForwardMm,
    "Level distance from the grip to the plumb line through the balance point.",
  ),
  armSideMm: info("Side arm", "length", (f) => f.armSideMm, "The same to the archer's right."),
  noseDownNm: info(
    "Nose-down moment",
    "moment",
    (f) => f.noseDownNm,
    "Weight times moment arm: what the hand must hold up.",
  ),
  cantRightNm: info(
    "Cant moment to the right",
    "moment",
    (f) => f.cantRightNm,
    "Weight times side arm: turns the top of the bow to the right.",
  ),
  holdForceN: info("Force on the fingers", "newtons", (f) => f.holdForceN, "At the draw shown."),
  "inertiaGrip.pitch": info(
    "Pitch",
    "inertia",
    (f) => f.inertiaGrip[2][2],
    "Resistance to the front rising or dropping, about the grip.",
  ),
  "inertiaGrip.yaw": info(
    "Yaw",
    "inertia",
    (f) => f.inertiaGrip[1][1],
    "Resistance to the front swinging left or right, about the grip.",
  ),
  "inertiaGrip.roll": info("Roll", "inertia", (f) => f.inertiaGrip[0][0], "Resistance to canting, about the grip."),
  pitchInertiaFree: info(
    "Pitch, swing weight free",
    "inertia",
    (f) => f.pitchInertiaFree ?? null,
    "A free weight counts less in a quick turn than a fixed one.",
  ),
  "principal.0": info("Smallest", "inertia", (f) => f.principal[0], "Principal moment about the centre of mass."),
  "principal.1": info("Middle", "inertia", (f) => f.principal[1], "Principal moment about the centre of mass."),
  "principal.2": info("Largest", "inertia", (f) => f.principal[2], "Principal moment about the centre of mass."),
  "stripped.massG": info(
    "Bow without its rig",
    "mass",
    (f) => f.stripped.massG,
    "Riser, limbs, string and accessories.",
  ),
  "fullDraw.netLiftNm": info(
    "Net at full draw",
    "moment",
    (f) => f.fullDraw.netLiftNm,
    "Lift of the line of pull less the nose-down moment, level: positive raises the front.",
  ),
  "fullDraw.liftNm": info(
    "Lift of the line of pull",
    "moment",
    (f) => f.fullDraw.liftNm,
    "The fingers pull above the grip and so raise the front.",
  ),
  "fullDraw.noseDownNm": info(
    "Nose-down moment",
    "moment",
    (f) => f.fullDraw.noseDownNm,
    "Of the drawn bow with its arrow.",
  ),
  "fullDraw.balancedForwardMm": info(
    "Balanced forward",
    "length",
    (f) => f.fullDraw.balancedForwardMm,
    "Where the balance point would have to be for a net of zero.",
  ),
  "fullDraw.centreMm.forward": info(
    "Balance point, drawn",
    "length",
    (f) => f.fullDraw.centreMm[0],
    "Ahead of the grip at full draw.",
  ),
  "fullDraw.gripShiftMm": info(
    "Grip pressure shift",
    "length",
    (f) => f.fullDraw.gripShiftMm,
    "How far the hand's pressure point moves to hold the net.",
  ),
  "fullDraw.holdForceN": info("Holding force", "newtons", (f) => f.fullDraw.holdForceN, "On the fingers at full draw."),
  "fullDraw.massG": info("Mass, drawn", "mass", (f) => f.fullDraw.massG, "With the arrow."),
} as const satisfies Readonly<Record<string, ReadoutInfo>>

export type ReadoutKey = keyof typeof readouts
