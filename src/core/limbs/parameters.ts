/** Every number a strung limb's shape and force depend on, and `draw`, where the nock stands. SI, per metre or per rad. */
export const limbParameters = [
  "length",
  "rootAngle",
  "recurve",
  "recurveFrom",
  "stiffnessTaper",
  "massTaper",
  "rootForward",
  "rootOut",
  "braceHeight",
  "drawLength",
  "drawWeight",
  "draw",
] as const

export type LimbParameter = (typeof limbParameters)[number]

/** Rate of every parameter along the direction asked for. */
export type ParameterRates = Readonly<Record<LimbParameter, number>>

const alone = (parameter: LimbParameter): ParameterRates =>
  Object.fromEntries(limbParameters.map((name) => [name, name === parameter ? 1 : 0])) as Record<LimbParameter, number>

const alones = Object.fromEntries(limbParameters.map((name) => [name, alone(name)])) as Record<
  LimbParameter,
  ParameterRates
>

/** One parameter changing, the others still. */
export const changing = (parameter: LimbParameter): ParameterRates => alones[parameter]
