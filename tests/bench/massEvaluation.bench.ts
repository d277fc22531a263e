import { readFileSync } from "node:fs"
import { join } from "node:path"
import RAPIER from "@dimforge/rapier3d-compat"
import { box, compose, principal, type Solid, tube, type Vec3 } from "../../src/core/solids"
import { evaluate } from "../../src/scene/evaluate"
import { parseScene } from "../../src/scene/parse"
import type { Ratio } from "../tools/bench"
import { medianMs } from "./median"

const EVALUATE_BUDGET_MS = 0.2
/** The engine is float32; a wider difference than this means that the two did not weigh the same thing. */
const SAME = 1e-4

/** Twenty bodies from the same numbers, built and weighed both ways; and the whole evaluation of a shipped scene. */
export async function run(): Promise<Ratio[]> {
  await RAPIER.init()
  const world = new RAPIER.World({ x: 0, y: 0, z: 0 })
  compare(ours(), byEngine(world))
  const [engine, own] = [steadyMs(() => byEngine(world)), steadyMs(ours)]
  world.free()
  const scene = shippedScene()
  const whole = steadyMs(() => evaluate(scene))
  return [
    {
      what: "mass evaluation of 20 bodies, times faster",
      ratio: engine / own,
      against: "rapier3d-compat",
      detail: `${(own * 1e3).toFixed(1)} µs to ${(engine * 1e3).toFixed(1)} µs; 5 times is wanted`,
    },
    {
      what: "every number of a full scene, limbs known",
      ratio: whole / EVALUATE_BUDGET_MS,
      against: "its budget",
      detail: `${whole.toFixed(3)} ms median to ${EVALUATE_BUDGET_MS} ms`,
    },
  ]
}

/** As in the middle of a drag: after as many calls as bring compiled code to its steady speed. */
function steadyMs(work: () => unknown): number {
  for (let call = 0; call < 3000; call++) work()
  return medianMs(work)
}

/** Riser, sight, and nine pairs of rod and weight fanned out behind and ahead of the grip, some of them askew. */
interface Body {
  readonly mass: number
  readonly centre: Vec3
  readonly direction: Vec3
  readonly length: number
  readonly radius: number
}
const BOXES: readonly { mass: number; centre: Vec3; size: Vec3 }[] = [
  { mass: 1.2, centre: [0.02, -0.01, 0.003], size: [0.05, 0.6, 0.03] },
  { mass: 0.21, centre: [0.13, 0.125, -0.029], size: [0.15, 0.08, 0.043] },
]
const TUBES: readonly Body[] = Array.from({ length: 18 }, (_, index) => {
  const angle = index * 0.7
  const direction: Vec3 = [Math.cos(angle), Math.sin(angle) * 0.6, Math.sin(angle) * 0.8]
  const away = 0.1 + 0.03 * index
  const centre: Vec3 = [0.04 + direction[0] * away, -0.07 + direction[1] * away, direction[2] * away]
  return { mass: 0.03 + 0.01 * index, centre, direction, length: 0.02 + 0.03 * index, radius: 0.008 + 0.0005 * index }
})

interface Weighed {
  readonly mass: number
  readonly centre: Vec3
  readonly moments: Vec3
}

function ours(): Weighed {
  const solids: Solid[] = BOXES.map(({ mass, centre, size }) => box(mass, centre, size))
  for (const { mass, centre, direction: d, length, radius } of TUBES) {
    const back = -length / 2
    const start: Vec3 = [centre[0] + d[0] * back, centre[1] + d[1] * back, centre[2] + d[2] * back]
    solids.push(tube(mass, start, d, length, radius, 0))
  }
  const whole = compose(solids)
  return { mass: whole.mass, centre: whole.centre, moments: principal(whole.aboutCentre).moments }
}

/** The turns are worked out beforehand: only the engine's own work is timed. Its cylinders lie along y. */
const TURNS = TUBES.map(({ direction: [x, y, z] }) => {
  const w = 1 + y
  const size = Math.hypot(z, x, w)
  return { x: z / size, y: 0, z: -x / size, w: w / size }
})

function byEngine(world: RAPIER.World): Weighed {
  const body = world.createRigidBody(RAPIER.RigidBodyDesc.dynamic())
  for (const { mass, centre, size } of BOXES) {
    const shape = RAPIER.ColliderDesc.cuboid(size[0] / 2, size[1] / 2, size[2] / 2)
    world.createCollider(shape.setMass(mass).setTranslation(...centre), body)
  }
  TUBES.forEach(({ mass, centre, length, radius }, index) => {
    const shape = RAPIER.ColliderDesc.cylinder(length / 2, radius).setRotation(TURNS[index]!)
    world.createCollider(shape.setMass(mass).setTranslation(...centre), body)
  })
  body.recomputeMassPropertiesFromColliders()
  const [at, inertia] = [body.localCom(), body.principalInertia()]
  const moments = [inertia.x, inertia.y, inertia.z].sort((a, b) => a - b)
  const weighed: Weighed = {
    mass: body.mass(),
    centre: [at.x, at.y, at.z],
    moments: [moments[0]!, moments[1]!, moments[2]!],
  }
  world.removeRigidBody(body)
  return weighed
}

function compare(one: Weighed, other: Weighed): void {
  const numbers = ({ mass, centre, moments }: Weighed) => [mass, ...centre, ...moments]
  numbers(one).forEach((value, index) => {
    const difference = Math.abs(value - numbers(other)[index]!)
    if (!(difference <= SAME)) throw new Error(`the two weighed different bodies: ${value} and ${difference} off`)
  })
}

function shippedScene() {
  const file = join(import.meta.dirname, "../../scenes/field-recurve-swinging-weights.json")
  const read = parseScene(readFileSync(file, "utf8"))
  if (!read.ok) throw new Error("the shipped scene does not read")
  return read.value
}
