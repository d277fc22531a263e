/** A place or direction in the limb's plane, bow frame: metres forward, and metres out from the bow's centre line. */
export interface PlanePoint {
  readonly forward: number
  readonly out: number
}

/** One recurve limb, unstrung, in SI. The upper one; the lower is its mirror image in the centre line. */
export interface RecurveLimb {
  /** Clamped root, m: forward of the grip's pivot point, and out from the centre line. */
  readonly rootForward: number
  readonly rootOut: number
  /** m, along the limb. */
  readonly length: number
  /** rad from straight out, positive leaning forward. */
  readonly rootAngle: number
  /** rad the unstrung limb turns forward, evenly over its part beyond `recurveFrom`. */
  readonly recurve: number
  /** Fraction of the length where the recurve begins, 0 … below 1. */
  readonly recurveFrom: number
  /** Bending stiffness at the tip over that at the root, above 0; linear between. */
  readonly stiffnessTaper: number
  /** Mass per length at the tip over that at the root, 0 or more; linear between. */
  readonly massTaper: number
  /** kg, of this one limb. */
  readonly mass: number
}

export interface LimbSetup {
  readonly limb: RecurveLimb
  /** m: the straight string at rest lies at forward = -braceHeight. */
  readonly braceHeight: number
  /** m from the grip's pivot point back to the nock. */
  readonly drawLength: number
  /** N, the draw force at `drawLength`. */
  readonly drawWeight: number
  /** Let the string lie on the limb where it would cross it; otherwise it always leaves at the tip. */
  readonly stringWrap?: boolean
}

export type LimbFailureReason = LimbFault["reason"]

/** What is wrong with a number that no limb can have. */
export type LimbNumberFault = "not-finite" | "not-positive" | "negative" | "beyond-half-turn" | "recurve-past-tip"

/** Why there is no answer, with the lengths it is about, m. */
type LimbFault =
  /** A number that no limb can have: not finite, or outside what its description allows. */
  | { readonly reason: "not-a-limb"; readonly fault: LimbNumberFault }
  /** No strung shape has its string at this brace height; `inFront`: the string would lie in front of the root. */
  | { readonly reason: "brace-unreachable"; readonly braceHeight: number; readonly inFront: boolean }
  /** A draw length below the brace height. */
  | { readonly reason: "draw-below-brace"; readonly draw: number; readonly braceHeight: number }
  /** Farther than limb and string in one straight line reach. */
  | { readonly reason: "draw-past-string"; readonly draw: number; readonly straight: number }
  /** On the way to this draw the limb would snap into another shape, or be pulled all but straight. */
  | { readonly reason: "limb-gives-way"; readonly draw: number }
  /** The iteration found no answer, though none of the above was seen. */
  | { readonly reason: "no-convergence"; readonly draw: number }

export type LimbFailure = LimbFault & {
  readonly ok: false
  /** The quantity to change: a key of `LimbSetup` or of `RecurveLimb`. */
  readonly quantity: Exclude<keyof LimbSetup, "limb"> | keyof RecurveLimb
  /** The nearest value of `quantity` seen to work, SI; absent where none was found. */
  readonly nearest?: number
}

export type LimbResult<T> = { readonly ok: true; readonly value: T } | LimbFailure

/** One place along the limb, root to tip. */
export interface LimbNode extends PlanePoint {
  /** Fraction of the limb's length from the root. */
  readonly fraction: number
  /** Direction of the limb, rad from straight out, positive leaning forward. */
  readonly angle: number
}

/** Second moments about a body's own centre over its mass, m²: ∫f², ∫f·o and ∫o² with f forward, o out. */
export interface SecondMoments {
  readonly forwardForward: number
  readonly forwardOut: number
  readonly outOut: number
}

/** The upper limb at one draw, in the limb's plane of the bow frame, SI. */
export interface LimbState {
  /** m from the grip's pivot point back to the nock. */
  readonly draw: number
  /** N */
  readonly stringTension: number
  /** N, of both limbs together: 2 · tension · sin(stringAngle). */
  readonly drawForce: number
  /** N/m, slope of the draw curve here. */
  readonly drawForceRate: number
  /** rad between the string's upper half and straight in; 0 at brace. */
  readonly stringAngle: number
  readonly tip: PlanePoint
  /** rad from straight out, positive leaning forward. */
  readonly tipAngle: number
  /** Where the string leaves the limb: the tip, unless the string lies on it. */
  readonly contact: PlanePoint
  /** m of the limb the string lies on. */
  readonly wrappedLength: number
  /** Root to tip, with the limb's direction at each: a curve through both stays far closer than a limb is thick. */
  readonly nodes: readonly LimbNode[]
  /** Centre of mass of the limb. */
  readonly centre: PlanePoint
  /** About `centre`, over the limb's mass. */
  readonly secondMoments: SecondMoments
  /** J, of this one limb, above its unstrung shape. */
  readonly bendingEnergy: number
  /** The solver's own unknowns, for a warm start. */
  readonly unknowns: { readonly lift: number; readonly load: number }
}

/** A strung bow whose stiffness is scaled to its draw weight. */
export interface BracedLimbs {
  readonly setup: LimbSetup
  /** m from string middle to tip, along string and covered limb; the same at every draw. */
  readonly halfString: number
  /** Bending stiffness at the root, N·m². */
  readonly rootStiffness: number
  /** Which of the shapes that may close the bow this is: the sign a warm start has to keep. */
  readonly branch: number
  readonly brace: LimbState
  /** At `setup.drawLength`. */
  readonly full: LimbState
}

export interface DrawCurvePoint {
  /** m */
  readonly draw: number
  /** N */
  readonly force: number
  /** N */
  readonly tension: number
  /** J, work of the draw force from brace to here. */
  readonly work: number
  /** J, bending energy of both limbs above that at brace; equals `work` but for the sum's step. */
  readonly energy: number
  readonly tip: PlanePoint
  readonly centre: PlanePoint
}
