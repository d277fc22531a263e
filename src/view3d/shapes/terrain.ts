import { hillRise, hillSpan, TERRACE } from "../../picture/hill"

/** Half the width of the drawn strip of hillside, m, and how deep its cut face is. */
export const STRIP = { half: 0.45, deep: 0.22 }

/** Corners of the line the strip follows: its ends and the two edges of the level place between them. */
const CORNERS = 4
/** Each corner has a point on the far and on the near edge, one on top of the face and one at its foot. */
const EACH = 4

/** A strip of hillside: its upper side, and the face it is cut off with toward the archer's right. */
export interface Terrain {
  readonly positions: Float32Array
  /** Of each point: way along the strip from below the grip, m; across it, m; and how far down the face, 0 … 1. */
  readonly places: Float32Array
  readonly indices: Uint16Array
}

export function emptyTerrain(): Terrain {
  const indices = new Uint16Array((CORNERS - 1) * 12)
  for (let piece = 0; piece < CORNERS - 1; piece++) {
    for (const face of [0, 2]) {
      const at = piece * EACH + face
      const next = at + EACH
      indices.set([at, at + 1, next + 1, at, next + 1, next], piece * 12 + face * 3)
    }
  }
  return {
    positions: new Float32Array(CORNERS * EACH * 3),
    places: new Float32Array(CORNERS * EACH * 3),
    indices,
  }
}

/** Lays the strip along a slope; heights are from the place where the archer stands. Returns the ways of its two ends, m. */
export function layTerrain(
  { positions, places }: Terrain,
  slopeDeg: number,
  lineTo: number,
): readonly [number, number] {
  const span = hillSpan(lineTo)
  const corners = [span.from, -TERRACE, TERRACE, span.to]
  const ways = corners.map((x) => Math.sign(x) * (TERRACE + Math.hypot(Math.abs(x) - TERRACE, hillRise(x, slopeDeg))))
  corners.forEach((x, corner) => {
    const y = hillRise(x, slopeDeg)
    const put = (point: number, height: number, z: number, depth: number) => {
      const at = (corner * EACH + point) * 3
      positions.set([x, height, z], at)
      places.set([ways[corner]!, z, depth], at)
    }
    put(0, y, -STRIP.half, 0)
    put(1, y, STRIP.half, 0)
    put(2, y, STRIP.half, 0)
    put(3, y - STRIP.deep, STRIP.half, 1)
  })
  return [ways[0]!, ways[CORNERS - 1]!]
}
