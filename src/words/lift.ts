import { spoken } from "./language"

/** What moving the draw elbow or the nock does to the lift of the line of pull; `by` is a moment. */
export const lift = spoken("lift", {
  degree: {
    raises: (by: string) => `Each degree higher raises the lift by ${by}.`,
    lowers: (by: string) => `Each degree higher lowers the lift by ${by}.`,
  },
  millimetre: {
    raises: (by: string) => `Each millimetre higher raises the lift by ${by}.`,
    lowers: (by: string) => `Each millimetre higher lowers the lift by ${by}.`,
  },
  inch: {
    raises: (by: string) => `Each tenth of an inch higher raises the lift by ${by}.`,
    lowers: (by: string) => `Each tenth of an inch higher lowers the lift by ${by}.`,
  },
  /** What a change has done so far; `by` has its sign. */
  changed: (by: string) => `lift ${by}`,
  unchanged: "lift unchanged",
})
