import type { ScreenPoint } from "./drag"

const NO_SHIFT: ScreenPoint = { x: 0, y: 0 }
const DIRECTIONS = 12
const RINGS = 5

/** Shifts to try, nearest first; straight up before sideways, so that the answer does not depend on rounding. */
const candidates: readonly ScreenPoint[] = [
  NO_SHIFT,
  ...Array.from({ length: RINGS * 2 }, (_, ring) =>
    Array.from({ length: DIRECTIONS }, (_, turn) => {
      const angle = (turn / DIRECTIONS) * 2 * Math.PI
      const radius = (ring + 1) / 2
      return { x: Math.sin(angle) * radius, y: -Math.cos(angle) * radius }
    }),
  ).flat(),
]

/**
 * How far to move each knob, px, so that no two are nearer than `spacing` (centre to centre). Earlier points keep
 * their place, later ones give way to the nearest free one around theirs, a `wanted` one if there is. Always the same
 * for the same points. A point with no free place within `RINGS` spacings stays where it is.
 */
export function spreadApart(
  points: readonly ScreenPoint[],
  spacing: number,
  wanted: (place: ScreenPoint, of: ScreenPoint) => boolean = () => true,
): ScreenPoint[] {
  const taken: ScreenPoint[] = []
  return points.map((point) => {
    const at = ({ x, y }: ScreenPoint): ScreenPoint => ({ x: point.x + x * spacing, y: point.y + y * spacing })
    const isFree = (shift: ScreenPoint) => {
      const { x, y } = at(shift)
      return taken.every((other) => Math.hypot(other.x - x, other.y - y) >= spacing - 1e-6)
    }
    const free = candidates.find((shift) => wanted(at(shift), point) && isFree(shift)) ?? candidates.find(isFree)
    const shift = free === undefined ? NO_SHIFT : { x: free.x * spacing, y: free.y * spacing }
    taken.push({ x: point.x + shift.x, y: point.y + shift.y })
    return shift
  })
}
