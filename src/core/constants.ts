/** Standard gravity, m/s², exact by definition (3rd CGPM, 1901). */
export const GRAVITY = 9.80665
/** One pound-force in newtons, exact: 0.45359237 kg × standard gravity. */
export const NEWTON_PER_LBF = 4.4482216152605
export const RADIAN_PER_DEGREE = Math.PI / 180
