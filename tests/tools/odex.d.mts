/** The part of odex (Hairer's extrapolation code for y' = f(x, y), version 2.0.4) that the tests use. */
export class Solver {
  constructor(dimension: number)
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  initialStepSize: number
  maxStepSize: number
  denseOutput: boolean
  /** Integrates from `start` to `end`; `output` may return false to stop. */
  solve(
    derivative: (x: number, y: number[]) => number[],
    start: number,
    y: number[],
    end: number,
    output?: (
      step: number,
      from: number,
      x: number,
      y: number[],
      interpolate: (component: number, x: number) => number,
    ) => boolean | undefined,
  ): { y: number[]; outcome: number; nStep: number; xEnd: number; nEval: number }
}
