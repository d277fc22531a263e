/** Every tolerance and grid size of the limb model, with its unit and its reason. */

/**
 * Integration steps over each piece of the limb (root to where the recurve begins, from there to the string).
 * Count. With eighth-order steps leaves a relative error of 1e-11 on usual limbs, below 1e-6 at half of `largestLoad`.
 */
export const stepsPerPiece = 12

/** The same while following a path, where a state only has to start the next. Leaves 1e-5 on usual limbs. */
export const stepsOnPath = 3

/**
 * Largest string tension · length² / root stiffness that is solved for. A strung limb has 2 to 10; beyond this it is all
 * but straight, and the fixed grid would no longer keep its accuracy: 1e-6 up to half of this, 1e-5 up to the whole.
 */
export const largestLoad = 120

/** Closing error (over limb length, or rad) below which the iteration stops. Rounding leaves about 1e-14. */
export const solvedResidual = 1e-12
/** Closing error above which a state is not shown as solved: what its last, unchecked step may leave on odd limbs. */
export const acceptedResidual = 1e-10
/** Closing error from which one more full Newton step, converging quadratically, ends near `solvedResidual`. */
export const nearlySolvedResidual = 1e-7
/** The same while following a path: ends below 1e-5. */
export const nearlySolvedOnPath = 1e-3
/** Newton steps before a start is given up. Count; a good start needs 2 to 4. */
export const newtonSteps = 12
/** Longest Newton step in the angle between limb and string, rad: keeps a poor start on its own branch. */
export const longestAngleStep = 0.5
/** Shortest share of a Newton step tried before the start is given up. */
export const shortestNewtonShare = 1 / 64

/** First, and shortest, step along a path from a solved state to the one asked for, as a share of the path. */
export const firstPathStep = 0.5
export const shortestPathStep = 1 / 64
/** Farthest a solved state may be from its prediction, and from the state before, in lift (rad): else a step may have changed branch. */
export const farthestFromPrediction = 0.3
export const farthestFromLast = 0.6

/** How far inside the last brace height or draw that was solved the nearest is named, m; a millimetre is what one sets. */
export const nearestMargin = 0.001
/** First and farthest distance from the brace height asked for at which one that works is looked for, m. */
export const nearestBraceFirst = 0.01
export const nearestBraceFarthest = 0.32
