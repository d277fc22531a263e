/**
 * Turn stiffness that the drawn string gives the bow about the grip, N·m/rad: 2·T·L²/ℓ. A turn by φ carries each string
 * end aside by L·φ against the hand at the nock, and the two tensions `T` then pull back at an angle L·φ/ℓ. The form is
 * the same for yaw and for pitch.
 *
 * @param tension of the string, N. @param pivotToNock m. @param tipToNock m, above 0.
 */
export const stringStiffness = (tension: number, pivotToNock: number, tipToNock: number): number =>
  (2 * tension * pivotToNock ** 2) / tipToNock

/** Damping about one axis for a share `ratio` of critical damping by itself, N·m·s/rad: 2ζ√(K·I). */
export const dampingFor = (ratio: number, stiffness: number, inertia: number): number =>
  2 * ratio * Math.sqrt(stiffness * inertia)

/**
 * Angle by which the front has dropped `time` s after the hand lets the bow go to turn about the grip, rad:
 * ½·(m·g·x / I_pitch)·t², for a drop small enough that the weight's arm stays what it was.
 */
export const noseDrop = (noseDownMoment: number, pitchInertia: number, time: number): number =>
  ((noseDownMoment / pitchInertia) * time ** 2) / 2
