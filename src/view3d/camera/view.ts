import type { Vec3 } from "../../core/solids"
import type { CameraPreset } from "../../state/bench"
import type { FiguresPlace } from "../../picture/figuresPlace"
import type { Fit, Insets } from "./fit"

/** Where the camera stands: a point looked at, how far off, and from which side. Radians, m, world axes. */
export interface View extends Fit {
  /** 0 from the archer's right, ½π from the target's end, -½π from behind the archer. */
  readonly azimuth: number
  /** Above level. */
  readonly elevation: number
}

/** Vertical field of view, rad: narrow, so that sizes near and far compare well. */
export const FIELD = (24 * Math.PI) / 180
export const HALF_HEIGHT = Math.tan(FIELD / 2)

/** A hair short of straight up, where left and right would be undefined for the orbiting. */
const OVERHEAD = Math.PI / 2 - 1e-3

/** Sides from which the presets look; the target is to the right in all but the archer's own. */
export const directions: Readonly<Record<CameraPreset, Pick<View, "azimuth" | "elevation">>> = {
  side: { azimuth: 0, elevation: 0.05 },
  top: { azimuth: 0, elevation: OVERHEAD },
  archer: { azimuth: -Math.PI / 2, elevation: 0.1 },
  free: { azimuth: -0.55, elevation: 0.3 },
}

/** Room kept free of the bow, px, for labels and handles. */
const ROOM = { edge: 30, below: 62 }

export function insetsFor(width: number, height: number, figures: FiguresPlace): Insets {
  const right = Math.max(ROOM.edge * 2, figures.right)
  // Never more than two fifths an edge, so that there is always a middle to put the bow in.
  const most = (part: number) => Math.min(0.4, part)
  return {
    left: most(ROOM.edge / width),
    right: most(right / width),
    top: most(Math.max(ROOM.edge, figures.top) / height),
    bottom: most(ROOM.below / height),
  }
}

/** A view part of the way (t 0 … 1) from one to another, around the shorter way. */
export function between(from: View, to: View, t: number): View {
  const turn = to.azimuth - from.azimuth
  const shorter = turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))
  const mix = (a: number, b: number) => a + (b - a) * t
  const target: Vec3 = [
    mix(from.target[0], to.target[0]),
    mix(from.target[1], to.target[1]),
    mix(from.target[2], to.target[2]),
  ]
  return {
    azimuth: t === 1 ? to.azimuth : from.azimuth + shorter * t,
    elevation: mix(from.elevation, to.elevation),
    distance: mix(from.distance, to.distance),
    target,
  }
}

/** Slow at both ends. */
export const eased = (t: number): number => t * t * (3 - 2 * t)
