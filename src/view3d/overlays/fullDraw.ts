import { Group, type Mesh } from "three"
import type { Vec3 } from "../../core/solids"
import { drawnWords, sketchedForce } from "../../describe/drawnWords"
import { drawnPlaces } from "../../picture/drawnPlaces"
import { heldDrawn } from "../../scene/heldDrawn"
import type { Labels, LabelWish } from "../labels"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { layBetween, mesh, putAt } from "../shapes/placing"
import { unitBox, unitCone, unitStroke, unitTube } from "../shapes/solids"

const SHAFT = 0.006
const HEAD = { length: 0.05, radius: 0.019 }
/** Half the height of the dimension's ticks and half the length of the mark in the grip, m. */
const TICK = 0.012
const PRESS = 0.03
/** The gap is drawn this far under the moment arm, m. */
const UNDER = 0.075

const ANY = Number.POSITIVE_INFINITY
/** What is said, in pictures from one width to below another, px, and the label's rank. */
const words = {
  net: { from: 0, to: 600, rank: 8 },
  gap: { from: 600, to: ANY, rank: 8 },
  lift: { from: 600, to: ANY, rank: 6 },
  weight: { from: 600, to: ANY, rank: 5 },
  hand: { from: 900, to: ANY, rank: 3 },
} as const
type Word = keyof typeof words
const names = Object.keys(words) as Word[]

/**
 * The balance of a drawn bow: its weight as an arrow down from the balance point, the lift of the line of pull as an
 * arrow of that same weight up from where it would balance, and how far that is; the shift of the hand's pressure at
 * the grip. World axes; nothing at brace.
 */
export function fullDrawOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  const ink = looks.mark("ink")
  const arrow = (): Arrow => ({ shaft: mesh(unitTube, ink), head: mesh(unitCone, ink) })
  const stroke = (width: number) => mesh(unitStroke, looks.stroke("ink", width, 1))
  const weight = arrow()
  const lift = arrow()
  const diamond = mesh(unitBox, ink)
  const core = mesh(unitBox, looks.mark("panel"))
  const gap = stroke(2)
  const ticks = [stroke(2), stroke(2)]
  const witness = mesh(unitStroke, looks.stroke("ink", 1.2, 0.7))
  const shift = stroke(2)
  const press = stroke(4.5)
  diamond.scale.set(0.025, 0.025, 0.003)
  core.scale.set(0.016, 0.016, 0.0034)
  for (const each of [diamond, core]) each.rotation.z = Math.PI / 4
  const all = [gap, ...ticks, witness, shift, press, weight.shaft, weight.head, lift.shaft, lift.head, diamond, core]
  all.forEach((each, order) => {
    each.renderOrder = 20 + order
    object.add(each)
  })

  return {
    object,
    update({ state: { preferences }, evaluation, level }) {
      const { scene, now } = evaluation
      const drawn = preferences.show.fullDraw ? heldDrawn(evaluation) : null
      object.visible = drawn !== null
      if (drawn === null) {
        for (const name of names) labels.put(`drawn-${name}`, null)
        return
      }
      const { balance, balanced, beyond, weightEnd, liftEnd, pressure } = drawnPlaces(now, drawn)
      layArrow(weight, balance, weightEnd)
      layArrow(lift, balanced, liftEnd)
      putAt(diamond, balanced)
      putAt(core, balanced)
      const [x, , z] = balance
      const row = level - UNDER
      layBetween(witness, balanced, [balanced[0], row - TICK, z])
      layBetween(gap, [x, row, z], [balanced[0], row, z])
      ;[x, balanced[0]].forEach((end, index) => {
        layBetween(ticks[index]!, [end, row - TICK, z], [end, row + TICK, z])
      })
      // A place too far off is not marked where it is not; its distance is still said.
      if (beyond) for (const each of [lift.shaft, lift.head, witness, ticks[1]!]) each.visible = false
      diamond.visible = core.visible = !beyond
      shift.visible = press.visible = pressure !== null
      if (pressure !== null) {
        layBetween(shift, [0, 0, 0], pressure)
        layBetween(
          press,
          [pressure[0] - PRESS, pressure[1], pressure[2]],
          [pressure[0] + PRESS, pressure[1], pressure[2]],
        )
      }
      const sketch = sketchedForce(scene.bow.kind, now.limbs.drawFraction)
      const said = drawnWords(drawn, now.armForward, sketch, preferences)
      const ahead = balanced[0] >= x
      const say = (name: Word, at: Vec3, side: LabelWish["side"]) => {
        const { from, to, rank } = words[name]
        const width = looks.pixels.x
        const wanted = preferences.show.labels && said[name] !== "" && width >= from && width < to
        labels.put(`drawn-${name}`, wanted ? { text: said[name], at, side, look: "turn", rank } : null)
      }
      say("lift", liftEnd, ahead ? "right" : "left")
      say("weight", weightEnd, ahead ? "left" : "right")
      const end: Vec3 = [Math.max(x, balanced[0]), row, z]
      say("net", end, "right")
      say("gap", end, "right")
      say("hand", pressure ?? [0, 0, 0], "left")
    },
    dispose() {
      for (const name of names) labels.put(`drawn-${name}`, null)
    },
  }
}

interface Arrow {
  readonly shaft: Mesh
  readonly head: Mesh
}

function layArrow({ shaft, head }: Arrow, from: Vec3, to: Vec3): void {
  const part = 1 - HEAD.length / Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2])
  const neck: Vec3 = [
    from[0] + (to[0] - from[0]) * part,
    from[1] + (to[1] - from[1]) * part,
    from[2] + (to[2] - from[2]) * part,
  ]
  layBetween(shaft, from, neck, SHAFT)
  layBetween(head, neck, to, HEAD.radius)
}
