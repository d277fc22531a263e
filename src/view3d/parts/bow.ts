import { type BufferGeometry, Group, type Mesh } from "three"
import { along, type Vec3 } from "../../core/solids"
import { nockPoint, stringLine } from "../../scene/assemble"
import type { LimbPlace } from "../../scene/limbPlace"
import type { Bow, Scene } from "../../scene/schema"
import type { Looks } from "../looks"
import { compoundLimb, recurveStrip, type StripSize, splitStrip, withButt } from "../../picture/outline/limbs"
import { loft } from "../shapes/loft"
import type { MeshData } from "../shapes/meshData"
import { layAlong, layBetween, mesh, putAt } from "../shapes/placing"
import { emptyRibbon, layRibbon } from "../shapes/ribbon"
import { gripSections, riserEnds, riserSections } from "../../picture/outline/riser"
import { changed, geometryOf, unitBox, unitCone, unitSphere, unitTube } from "../shapes/solids"
import type { PartDrawing } from "./drawing"

/** Riser body, grip piece and the bolts that hold the limbs. */
export function riserPart(looks: Looks): PartDrawing {
  const object = new Group()
  const grip = mesh(geometryOf(loft(gripSections())), looks.surface("grip"))
  const bolts = [mesh(unitTube, looks.surface("metal")), mesh(unitTube, looks.surface("metal"))]
  object.add(grip, ...bolts)
  let body: Mesh | null = null
  let shapedFor: Pick<Scene, "bow" | "mounts"> | null = null
  return {
    object,
    update(_, { evaluation: { scene } }) {
      if (shapedFor?.bow === scene.bow && shapedFor.mounts === scene.mounts) return
      shapedFor = scene
      const geometry = geometryOf(loft(riserSections(scene)))
      if (body === null) {
        body = mesh(geometry, looks.surface("riser"))
        object.add(body)
      } else {
        body.geometry.dispose()
        body.geometry = geometry
      }
      const ends = riserEnds(scene.bow)
      const bolt = (at: number, y: number) =>
        layAlong(bolts[at]!, [ends.forward - 0.012, y, 0], [1, 0, 0], 0.024, 0.008)
      bolt(0, ends.upper - 0.024)
      bolt(1, ends.lower + 0.024)
    },
    dispose() {
      body?.geometry.dispose()
      grip.geometry.dispose()
    },
  }
}

interface Strip {
  readonly mesh: Mesh
  lay(curve: readonly Vec3[], size: StripSize): void
  dispose(): void
}

/** A strip laid anew in the same arrays for as long as the count of points stays. */
function strip(looks: Looks): Strip {
  let data: MeshData | null = null
  let points = 0
  const body = mesh(unitBox as BufferGeometry, looks.surface("limb"))
  const dispose = () => {
    if (data !== null) body.geometry.dispose()
  }
  return {
    mesh: body,
    lay(curve, size) {
      if (data === null || points !== curve.length) {
        dispose()
        points = curve.length
        data = emptyRibbon(points)
        body.geometry = geometryOf(data)
      }
      layRibbon(data, curve, size)
      changed(body.geometry)
    },
    dispose,
  }
}

/** Both limbs: a recurve's along their solved curves; a compound's two strips and a cam each. */
export function limbsPart(looks: Looks): PartDrawing {
  const object = new Group()
  const strips = [strip(looks), strip(looks), strip(looks), strip(looks)]
  const cams = [0, 1].map(() => mesh(unitTube, looks.surface("cam")))
  const axles = [0, 1].map(() => mesh(unitTube, looks.surface("metal")))
  object.add(...strips.map((each) => each.mesh), ...cams, ...axles)
  let laid: LimbPlace | null = null
  let laidFor: Bow | null = null
  return {
    object,
    update(_, { evaluation: { scene, now } }) {
      // The solved limbs are a new object only when the bow or its draw is another.
      if (laid === now.limbs && laidFor === scene.bow) return
      ;[laid, laidFor] = [now.limbs, scene.bow]
      const { curves } = now.limbs
      strips[2]!.mesh.visible = strips[3]!.mesh.visible = curves === null
      for (const each of [...cams, ...axles]) each.visible = curves === null
      if (curves !== null) {
        curves.forEach((curve, side) => strips[side]!.lay(withButt(curve), recurveStrip))
        return
      }
      for (const side of [0, 1] as const) {
        const { curve, cam, camRadius } = compoundLimb(scene.bow, now.limbs, side === 0 ? 1 : -1)
        for (const half of [0, 1] as const) {
          const z = half === 0 ? 0.013 : -0.013
          strips[side * 2 + half]!.lay(
            curve.map(([x, y]) => [x, y, z] as const),
            splitStrip,
          )
        }
        layAlong(cams[side]!, [cam[0], cam[1], -0.004], [0, 0, 1], 0.008, camRadius)
        layAlong(axles[side]!, [cam[0], cam[1], -0.022], [0, 0, 1], 0.044, 0.004)
      }
    },
    dispose: () => strips.forEach((each) => each.dispose()),
  }
}

/** Radius of the string and of its served middle as drawn, and half the served length, m. */
const STRING = { radius: 0.0014, served: 0.002, serving: 0.07 }

export function stringPart(looks: Looks): PartDrawing {
  const object = new Group()
  const pieces = [mesh(unitTube, looks.surface("string")), mesh(unitTube, looks.surface("string"))]
  const serving = [mesh(unitTube, looks.surface("carbon")), mesh(unitTube, looks.surface("carbon"))]
  const nocking = mesh(unitSphere, looks.surface("metal"))
  object.add(...pieces, ...serving, nocking)
  return {
    object,
    update(_, { evaluation: { scene, now } }) {
      const line = stringLine(scene.bow, now.limbs)
      const nock = nockPoint(scene.bow, now.limbs)
      const ends = [line[0]!, line.at(-1)!] as const
      ends.forEach((end, side) => {
        layBetween(pieces[side]!, nock, end, STRING.radius)
        const length = Math.hypot(end[0] - nock[0], end[1] - nock[1], end[2] - nock[2])
        const part = Math.min(1, STRING.serving / length)
        const to = nock.map((from, axis) => from + (end[axis]! - from) * part) as unknown as Vec3
        layBetween(serving[side]!, nock, to, STRING.served)
      })
      putAt(nocking, nock)
      nocking.scale.setScalar(0.0035)
    },
  }
}

/** Shaft, point, nock and three vanes. */
export function arrowPart(looks: Looks): PartDrawing {
  const object = new Group()
  const shaft = mesh(unitTube, looks.surface("shaft"))
  const point = mesh(unitCone, looks.surface("metal"))
  const nock = mesh(unitTube, looks.surface("fletching"))
  const vanes = [0, 1, 2].map(() => mesh(unitBox as BufferGeometry, looks.surface("fletching")))
  object.add(shaft, point, nock, ...vanes)
  return {
    object,
    update(_, { evaluation: { scene, now } }) {
      const start = nockPoint(scene.bow, now.limbs)
      const length = scene.bow.arrow.lengthMm * 1e-3
      const tip = Math.min(0.03, length / 5)
      layAlong(nock, along(start, [1, 0, 0], -0.003), [1, 0, 0], 0.014, 0.0034)
      layAlong(shaft, start, [1, 0, 0], length - tip, 0.0028)
      layAlong(point, along(start, [1, 0, 0], length - tip), [1, 0, 0], tip, 0.0031)
      vanes.forEach((vane, index) => {
        const angle = Math.PI + (index * 2 * Math.PI) / 3
        const out = 0.0028 + 0.005
        vane.position.set(start[0] + 0.045, start[1] + Math.sin(angle) * out, start[2] + Math.cos(angle) * out)
        vane.rotation.set(-angle, 0, 0)
        vane.scale.set(Math.min(0.045, length / 4), 0.0006, 0.01)
      })
    },
  }
}
