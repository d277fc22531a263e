import type { Limit } from "../../core/find"
import { GRAM, MM } from "../assemble"
import type { FindTarget } from "./question"

/** The limit each key of the target stands for, SI. A floor of nothing binds nothing and is left out. */
export function limitsOf(target: FindTarget): { key: keyof FindTarget; limit: Limit }[] {
  const made: { key: keyof FindTarget; limit: Limit }[] = []
  ;(["forwardMm", "upMm", "sideMm"] as const).forEach((key, axis) => {
    const band = target[key]
    if (band === undefined) return
    made.push({ key, limit: { kind: "balance", axis: axis as 0 | 1 | 2, min: band[0] * MM, max: band[1] * MM } })
  })
  if (target.netLiftNm !== undefined) {
    made.push({ key: "netLiftNm", limit: { kind: "netLift", min: target.netLiftNm[0], max: target.netLiftNm[1] } })
  }
  if (target.massMaxG !== undefined)
    made.push({ key: "massMaxG", limit: { kind: "mass", max: target.massMaxG * GRAM } })
  for (const [key, axis] of [
    ["pitchLeast", "pitch"],
    ["yawLeast", "yaw"],
    ["rollLeast", "roll"],
  ] as const) {
    const min = target[key]
    if (min !== undefined && min > 0) made.push({ key, limit: { kind: "resistance", axis, min } })
  }
  for (const [key, way] of [
    ["reachForwardMm", "forward"],
    ["reachSideMm", "side"],
  ] as const) {
    const max = target[key]
    if (max !== undefined) made.push({ key, limit: { kind: "reach", way, max: max * MM } })
  }
  return made
}
