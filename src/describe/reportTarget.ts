import type { Spreads } from "../scene/measure"
import type { Target } from "../scene/schema"
import type { Report } from "../scene/sweeps"
import { AS_ASSUMED } from "./balanceText"
import { DECIMALS, fixed, pairs, signed } from "./reportTable"

const { gram, mm, newtonMetre } = DECIMALS

/**
 * Each aim the scene states, with what it is now and by how much it misses; nothing without an aim. `spreads` are the ± of
 * a measured bow's numbers, null on any other: what no reading determines is said to hold only as assumed.
 */
export function targetSection(target: Target, report: Report, spreads: Spreads | null): string[] {
  const [forward, up, right] = report.centreMm
  const lengths = [
    aim("balance point forward", target.forwardMm, forward, mm, "mm", spreads?.["centreMm.forward"]),
    aim("balance point up", target.upMm, up, mm, "mm", spreads?.["centreMm.up"]),
    aim("balance point to the right", target.sideMm, right, mm, "mm", spreads?.["centreMm.side"]),
    aim(
      "net lift at full draw",
      target.netLiftNm,
      report.fullDraw.netLiftNm,
      newtonMetre,
      "N·m",
      spreads?.["fullDraw.netLiftNm"],
    ),
    aim(
      "mass",
      target.massMaxG === undefined ? undefined : [0, target.massMaxG],
      report.massG,
      gram,
      "g",
      spreads?.massG,
    ),
  ]
  const rows = lengths.flat()
  return rows.length === 0 ? [] : ["Against the target", ...pairs(rows)]
}

function aim(
  label: string,
  range: readonly [number, number] | undefined,
  value: number,
  decimals: number,
  unit: string,
  spread: number | undefined,
): [string, string][] {
  if (range === undefined) return []
  const [min, max] = range
  const miss = value < min ? value - min : value > max ? value - max : 0
  // A miss too small to show is still a miss: digits are added until it does show.
  let places = decimals
  while (miss !== 0 && places < 12 && Number(miss.toFixed(places)) === 0) places++
  const caution = spread === Number.POSITIVE_INFINITY ? `, ${AS_ASSUMED}` : ""
  const verdict = (miss === 0 ? "inside" : `${signed(miss, places)} ${unit} outside`) + caution
  return [[label, `${fixed(value, decimals)} ${unit}, wanted ${min} … ${max} ${unit}: ${verdict}`]]
}
