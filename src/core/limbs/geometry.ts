import type { Problem } from "./equilibrium"
import { shapeOf } from "./shape"
import type { LimbSetup } from "./types"

/** The limb with its nock at `draw` (m behind the grip's pivot) and a half string of `halfString` (m). */
export function drawnProblem(setup: LimbSetup, halfString: number, draw: number): Problem {
  const { limb } = setup
  return {
    shape: shapeOf(limb),
    rootAngle: limb.rootAngle,
    demand: {
      kind: "drawn",
      back: (draw + limb.rootForward) / limb.length,
      inward: limb.rootOut / limb.length,
      halfString: halfString / limb.length,
    },
    wraps: setup.stringWrap === true,
  }
}

/** Draw at which limb and half string lie in one straight line from root to nock, m; nothing reaches it. */
export function straightDraw({ limb }: LimbSetup, halfString: number): number {
  const reach = Math.sqrt(Math.max(0, (limb.length + halfString) ** 2 - limb.rootOut ** 2))
  return reach - limb.rootForward
}
