import { CanvasTexture, DoubleSide, Group, MeshBasicMaterial, PlaneGeometry } from "three"
import { groundLabel } from "../../describe/pictureWords"
import type { Vec3 } from "../../core/solids"
import { TERRACE } from "../../picture/hill"
import { picture } from "../../words/picture"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { layBetween, mesh } from "../shapes/placing"
import { strokeGeometry, unitStroke } from "../shapes/solids"

/** Distances marked along the line to the target: round numbers in the unit chosen. */
const marks = { mm: [0.5, 1, 1.5], in: [20, 40, 60].map((inches) => inches * 0.0254) } as const
/** The line to the target with distance marks, and a soft shade under the bow. World axes; its y is the ground. */
export function groundOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  const way = mesh(unitStroke, looks.stroke("ink-soft", 2.2, 0.9))
  const head = mesh(
    strokeGeometry([
      [
        [0, 0, 0],
        [-0.09, 0, 0.05],
      ],
      [
        [0, 0, 0],
        [-0.09, 0, -0.05],
      ],
    ]),
    looks.stroke("ink-soft", 2.2, 0.9),
  )
  const tickShape = strokeGeometry([
    [
      [0, 0, -0.04],
      [0, 0, 0.04],
    ],
  ])
  const ticks = marks.mm.map(() => mesh(tickShape, looks.stroke("ink-soft", 2, 0.9)))
  const shadeMaterial = new MeshBasicMaterial({
    map: softSpot(),
    transparent: true,
    depthWrite: false,
    opacity: 0.32,
    side: DoubleSide,
    // Flat: three would draw its two sides one after the other, and take the material for a new one each time.
    forceSinglePass: true,
  })
  const plane = new PlaneGeometry(1, 1).rotateX(-Math.PI / 2)
  const shade = mesh(plane, shadeMaterial)
  shade.renderOrder = -1
  object.add(way, head, ...ticks, shade)
  return {
    object,
    update({ state: { preferences }, evaluation: { now }, ground, hillDeg, line }) {
      const { show, lengthUnit } = preferences
      object.visible = show.ground
      object.position.y = ground
      // A hillside has its own line to its own target.
      const flat = hillDeg === 0
      way.visible = head.visible = flat
      if (flat) layBetween(way, [line.from, 0, 0], [line.to, 0, 0])
      head.position.x = line.to
      const ends = now.parts.flatMap((part) => (part.axis === undefined ? [] : [part.centre]))
      const [from, to] = [Math.min(-0.1, ...ends.map(([x]) => x)), Math.max(0.2, ...ends.map(([x]) => x))]
      const half = Math.max(0.16, ...ends.map(([, , z]) => Math.abs(z)))
      shade.position.set((from + to) / 2, 0.001, 0)
      if (flat) shade.scale.set((to - from) * 1.5 + 0.3, 1, half * 3)
      else {
        shade.position.x = 0
        shade.scale.set(2 * TERRACE, 1, 2 * TERRACE)
      }
      const words = show.ground && show.labels && flat
      const along = (x: number): Vec3 => [x, ground, 0]
      const toward = { text: picture.toTarget, at: along(line.to), side: "above", look: "way", rank: 7 } as const
      labels.put("target-way", words ? toward : null)
      marks[lengthUnit].forEach((x, index) => {
        const within = flat && x < line.to - 0.05
        const tick = ticks[index]!
        tick.visible = within
        tick.position.x = x
        const wish = { text: groundLabel(x, preferences), at: along(x), side: "below", look: "plain", rank: 1 } as const
        labels.put(`mark-${index}`, words && within ? wish : null)
      })
    },
    dispose() {
      head.geometry.dispose()
      tickShape.dispose()
      plane.dispose()
      shadeMaterial.map?.dispose()
      shadeMaterial.dispose()
    },
  }
}

const SPOT = 128

/** Darkest in the middle, nothing at the rim. */
function softSpot(): CanvasTexture {
  const canvas = document.createElement("canvas")
  canvas.width = canvas.height = SPOT
  const brush = canvas.getContext("2d")
  if (brush !== null) {
    const fade = brush.createRadialGradient(SPOT / 2, SPOT / 2, 0, SPOT / 2, SPOT / 2, SPOT / 2)
    fade.addColorStop(0, "rgb(0 0 0 / 1)")
    fade.addColorStop(0.5, "rgb(0 0 0 / 0.35)")
    fade.addColorStop(1, "rgb(0 0 0 / 0)")
    brush.fillStyle = fade
    brush.fillRect(0, 0, SPOT, SPOT)
  }
  return new CanvasTexture(canvas)
}
