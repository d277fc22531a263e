import { cross, dot, scale, subtract, unit, type Vec3 } from "../../src/core/solids"
import type { Projected } from "../../src/picture/projector"
import { type Evaluation, evaluate } from "../../src/scene/evaluate"
import { readScene } from "../../src/scene/parse"
import type { Scene } from "../../src/scene/schema"
import { arm, type Document, discs, rigged, rod, swing, vbar } from "../scene/documents"

/** The scene of a document that is valid by intent. */
export function sceneOf(document: Document): Scene {
  const read = readScene(document)
  if (!read.ok) throw new Error(read.errors.map(({ path, message }) => `${path} ${message}`).join("; "))
  return read.value
}

/** Two V-bars, mounts tilted and turned, swing weights on and off their stops, raised and canted. */
export const turnedDocument = (): Document => ({
  ...rigged(
    {
      front: [
        vbar({ left: arm(35, 12, [rod({ lengthMm: 250 }), swing({ stopDeg: 5 })]), right: arm(72, -9, [discs()]) }),
        rod(),
        vbar({ left: arm(140, 31, [discs({ count: 2 })]) }),
      ],
      back: [rod({ lengthMm: 130 }), swing({ joint: "ball", stopDeg: 60 })],
    },
    {
      mounts: {
        front: { atMm: [43, -71, 2], pitchDeg: 13, yawDeg: -17 },
        back: { atMm: [-17, -83, 0], pitchDeg: 7, yawDeg: 170 },
      },
    },
  ),
  pose: { draw: 0.35, slopeDeg: 23, cantDeg: 11 },
})

/** The evaluation of a scene that has one by intent. */
export function evaluationOf(scene: Scene): Evaluation {
  const found = evaluate(scene)
  if (!found.ok) throw new Error(found.errors.map(({ message }) => message).join("; "))
  return found.value
}

type Project = (world: Vec3) => Projected

/** Parallel projection at 400 px a metre, origin at (500, 300), looking along `line`, with `up` upward. */
export function parallel(line: Vec3, up: Vec3 = [0, 1, 0]): Project {
  const right = unit(cross(line, up))
  const top = cross(right, unit(line))
  return (world) => ({
    x: 500 + 400 * dot(world, right),
    y: 300 - 400 * dot(world, top),
    depth: dot(world, unit(line)),
    visible: true,
  })
}

export const fromTheRight = parallel([0, 0, -1])
export const fromAbove = parallel([0, -1, 0], [0, 0, -1])
export const fromBehind = parallel([1, 0, 0])

/** A camera at `eye` that looks at `at`; 700 px a metre at 1 m. Nothing is seen behind it. */
export function perspective(eye: Vec3, at: Vec3): Project {
  const line = unit(subtract(at, eye))
  const right = unit(cross(line, [0, 1, 0]))
  const top = cross(right, line)
  return (world) => {
    const from = subtract(world, eye)
    const depth = dot(from, line)
    const k = scale(from, 700 / depth)
    return { x: 500 + dot(k, right), y: 300 - dot(k, top), depth, visible: depth > 0.01 }
  }
}
