/** Readings that a bow with a known riser would give, in the file's units. */
import { rowsOf } from "../../../src/core/measure"
import { placeLimbs } from "../../../src/scene/limbPlace"
import { observationOf } from "../../../src/scene/measure/observed"
import { assumedBody } from "../../../src/scene/measure/setup"
import { restingTilt } from "../../../src/scene/measure"
import { evaluate } from "../../../src/scene/evaluate"
import type { Measurement, Scene } from "../../../src/scene/schema"
import type { Vec3 } from "../../../src/core/solids"

const words = { excluded: false, note: "", date: "" }
type On = Pick<Measurement, "on" | "rig">
export const onBow: On = { on: "bow" }
export const withRig = ({ rig }: Scene): On => ({ on: "rigged", rig })

const dressed = (scene: Scene, on: On): Scene => ({
  ...scene,
  rig: on.rig ?? [],
  pose: { draw: 0, slopeDeg: 0, cantDeg: 0 },
})
export const evaluated = (scene: Scene) => {
  const made = evaluate(scene)
  if (!made.ok) throw new Error(JSON.stringify(made.errors))
  return made.value
}

export const weighed = (scene: Scene, on: On): Measurement => ({
  kind: "scale",
  massG: evaluated(dressed(scene, on)).now.mass * 1e3,
  errorG: 4,
  ...on,
  ...words,
})

/** A swing weight hangs by the tilt, and the tilt by it: settled by repeating. */
export function hung(scene: Scene, on: On, atMm: Vec3): Measurement {
  let tilt = { slopeDeg: 0, cantDeg: 0 }
  for (let round = 0; round < 40; round++) {
    tilt = restingTilt({ atMm }, evaluated({ ...dressed(scene, on), pose: { draw: 0, ...tilt } }))!
  }
  return { kind: "hang", atMm: [...atMm], pointErrorMm: 1.5, ...tilt, errorDeg: 0.4, ...on, ...words }
}

/** With its time filled in by asking how far off a time of nothing would be. */
function timed(scene: Scene, reading: Measurement): Measurement {
  const limbs = placeLimbs(scene.bow, 0)
  if (!limbs.ok || !("seconds" in reading)) throw new Error("no such swing")
  const [row] = rowsOf(observationOf(scene, limbs.value, reading), assumedBody(scene))
  return { ...reading, seconds: reading.seconds - row!.residual * reading.count }
}

export const swung = (scene: Scene, on: On, atMm: Vec3, axis: "pitch" | "yaw" | "roll"): Measurement =>
  timed(scene, {
    kind: "swing",
    atMm: [...atMm],
    pointErrorMm: 1.5,
    axis,
    count: 20,
    seconds: 20,
    errorSeconds: 0.15,
    amplitudeDeg: 13,
    ...on,
    ...words,
  })

export const twisted = (scene: Scene, on: On, axis: "pitch" | "yaw" | "roll"): Measurement =>
  timed(scene, {
    kind: "twist",
    axis,
    lineMm: 1300,
    radiusMm: 230,
    radiusErrorMm: 2,
    count: 10,
    seconds: 20,
    errorSeconds: 0.15,
    ...on,
    ...words,
  })

/** Enough for everything. */
export const wholeSession = (scene: Scene, on: On): Measurement[] => [
  weighed(scene, on),
  hung(scene, on, [-190, 210, 0]),
  hung(scene, on, [310, -71, 13]),
  swung(scene, on, [41, 330, 0], "pitch"),
  twisted(scene, on, "pitch"),
  twisted(scene, on, "yaw"),
  twisted(scene, on, "roll"),
]
