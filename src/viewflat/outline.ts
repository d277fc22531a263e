import type { ScreenPoint } from "../picture/drag"

/**
 * The convex outline of points, counter-clockwise in axes with y up, without points on its edges; two points or fewer
 * are returned as they are. Monotone chain (A. M. Andrew, "Another efficient algorithm for convex hulls in two
 * dimensions", Information Processing Letters 9, 1979).
 */
export function convexOutline(points: readonly ScreenPoint[]): ScreenPoint[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y)
  if (sorted.length < 3) return sorted
  const half = (from: readonly ScreenPoint[]): ScreenPoint[] => {
    const chain: ScreenPoint[] = []
    for (const point of from) {
      while (chain.length > 1 && turn(chain.at(-2)!, chain.at(-1)!, point) <= 0) chain.pop()
      chain.push(point)
    }
    chain.pop()
    return chain
  }
  return [...half(sorted), ...half(sorted.reverse())]
}

/** Positive for a left turn at b, in axes with y up. */
const turn = (a: ScreenPoint, b: ScreenPoint, c: ScreenPoint): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)

/** An SVG path through points, to a tenth of a pixel. */
export function pathThrough(points: readonly ScreenPoint[], closed: boolean): string {
  if (points.length === 0) return ""
  return `M${points.map(({ x, y }) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L")}${closed ? "Z" : ""}`
}
