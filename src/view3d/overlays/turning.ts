import { Group, Matrix4, MeshBasicMaterial } from "three"
import { multiply, type Vec3 } from "../../core/solids"
import { turnLabel } from "../../describe/pictureWords"
import { picture3d } from "../../words/picture3d"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { arcEnd, arcIndices, arcSweep, emptyArc, FULLEST, layArc } from "../shapes/arc"
import { ellipsoidAxes } from "../shapes/ellipsoid"
import { layAlong, mesh } from "../shapes/placing"
import { geometryOf, unitCircles, unitCone, unitSphere } from "../shapes/solids"

/** Drawn at half its true size, so that it stays inside the picture; its label says so. */
const ELLIPSOID_SCALE = 0.5

/** The solid ellipsoid with the bow's mass and turn resistance, about its balance point. In bow axes. */
export function ellipsoidOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  object.matrixAutoUpdate = false
  const material = new MeshBasicMaterial({ transparent: true, opacity: 0.1, depthWrite: false })
  looks.follow("ink", (colour) => material.color.copy(colour))
  const body = mesh(unitSphere, material)
  object.add(body, mesh(unitCircles, looks.stroke("ink", 1.3, 0.55)))
  const stretch = new Matrix4()
  return {
    object,
    update({ state: { preferences }, evaluation: { now, principal } }) {
      object.visible = preferences.show.ellipsoid
      const sizes = ellipsoidAxes(now.mass, principal.moments)
      const [a, b, c] = sizes.map((size) => Math.max(size * ELLIPSOID_SCALE, 1e-4)) as [number, number, number]
      const [u, v, w] = principal.axes
      const [x, y, z] = now.centre
      object.matrix.set(u[0], v[0], w[0], x, u[1], v[1], w[1], y, u[2], v[2], w[2], z, 0, 0, 0, 1)
      object.matrix.multiply(stretch.makeScale(a, b, c))
      object.matrixWorldNeedsUpdate = true
      // The longest axis belongs to the smallest moment, the first.
      const end: Vec3 = [x + u[0] * a, y + u[1] * a, z + u[2] * a]
      const other: Vec3 = [x - u[0] * a, y - u[1] * a, z - u[2] * a]
      const at = multiply(now.rotation, end[1] > other[1] ? end : other)
      const shown = preferences.show.ellipsoid && preferences.show.labels
      labels.put("ellipsoid", shown ? { text: picture3d.ellipsoid, at, side: "right", look: "plain", rank: 5 } : null)
    },
    dispose: () => material.dispose(),
  }
}

/** Each turn: its name, the circle it is drawn on, its place in the inertia tensor. */
const turns = [
  { name: "pitch", radius: 0.21, start: -0.5, element: "zz" },
  { name: "yaw", radius: 0.17, start: -0.6, element: "yy" },
  { name: "roll", radius: 0.13, start: -1.2, element: "xx" },
] as const
const THICKNESS = 0.0045
const HEAD = { length: 0.024, radius: 0.0095 }

/** The circle's own x and y in bow axes, so that the arrow turns the positive way: front up, front left, top right. */
const planes: Readonly<Record<(typeof turns)[number]["name"], readonly [Vec3, Vec3]>> = {
  pitch: [
    [1, 0, 0],
    [0, 1, 0],
  ],
  yaw: [
    [1, 0, 0],
    [0, 0, -1],
  ],
  roll: [
    [0, 0, -1],
    [0, 1, 0],
  ],
}

/** Curved arrows about the grip, longer the harder the rigged bow is to turn than the bow alone. In bow axes. */
export function arcsOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  const material = new MeshBasicMaterial({ transparent: true, opacity: 0.62 })
  looks.follow("ink-soft", (colour) => material.color.copy(colour))
  const arcs = turns.map((turn) => {
    const group = new Group()
    group.matrixAutoUpdate = false
    const [x, y] = planes[turn.name]
    const z: Vec3 = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]]
    group.matrix.set(x[0], y[0], z[0], 0, x[1], y[1], z[1], 0, x[2], y[2], z[2], 0, 0, 0, 0, 1)
    const data = emptyArc()
    // Laid whole once; a shorter arc draws less of it, so that a drag sends no shapes to the graphics card.
    layArc(data, turn.radius, THICKNESS, turn.start, FULLEST)
    const bent = mesh(geometryOf(data), material)
    const head = mesh(unitCone, material)
    group.add(bent, head)
    object.add(group)
    return { turn, bent, head, x, y, sweep: Number.NaN }
  })
  return {
    object,
    update({ state: { preferences }, evaluation: { now, stripped } }) {
      const { show } = preferences
      object.visible = show.arcs
      for (const arc of arcs) {
        const { name, radius, start, element } = arc.turn
        const multiple = now.aboutOrigin[element] / stripped.aboutOrigin[element]
        const sweep = arcSweep(multiple)
        if (sweep !== arc.sweep) {
          arc.sweep = sweep
          arc.bent.geometry.setDrawRange(0, arcIndices(sweep))
          const { at, heading } = arcEnd(radius, start + sweep)
          layAlong(arc.head, at, heading, HEAD.length, HEAD.radius)
        }
        const { at } = arcEnd(radius * 1.09, start + sweep)
        const place = [0, 1, 2].map((k) => arc.x[k]! * at[0] + arc.y[k]! * at[1]) as unknown as Vec3
        const side = place[0] >= 0 ? "right" : "left"
        const wish = {
          text: turnLabel(picture3d[name], multiple),
          at: multiply(now.rotation, place),
          side,
          look: "turn",
          rank: 4,
        } as const
        labels.put(name, show.arcs && show.labels ? wish : null)
      }
    },
    dispose() {
      for (const { bent } of arcs) bent.geometry.dispose()
      material.dispose()
    },
  }
}
