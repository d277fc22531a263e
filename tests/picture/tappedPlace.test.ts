import { expect, test } from "vitest"
import { tappedPlace } from "../../src/picture/tappedPlace"
import { expectNear } from "../core/near"

const axis = {
  start: [0.2, 0.3, 0.5],
  direction: [0, 0.6, 0.8],
  length: 0.7,
  outerRadius: 0.01,
  innerRadius: 0,
} as const

test("a tap on a rod's skin means the rod's axis there", () => {
  const at = [0.21, 0.3 + 0.3 * 0.6, 0.5 + 0.3 * 0.8] as const
  expectNear(tappedPlace({ kind: "rod", axis }, at), [0.2, 0.48, 0.74])
})

test("a tap on a rod's end means that end and no place beyond it", () => {
  expectNear(tappedPlace({ kind: "rod", axis }, [0.2, 0.9, 1.3]), [0.2, 0.72, 1.06])
  expectNear(tappedPlace({ kind: "rod", axis }, [0.2, 0.2, 0.4]), [0.2, 0.3, 0.5])
})

test("a tap on limb or string means their plane, on the riser the skin itself", () => {
  expect(tappedPlace({ kind: "limbs" }, [0.02, 0.7, 0.017])).toEqual([0.02, 0.7, 0])
  expect(tappedPlace({ kind: "string" }, [-0.2, 0.3, 0.002])).toEqual([-0.2, 0.3, 0])
  expect(tappedPlace({ kind: "riser" }, [0.03, 0.05, 0.013])).toEqual([0.03, 0.05, 0.013])
})
