import { Group, InstancedMesh, Matrix4, Mesh, MeshStandardMaterial, type Object3D } from "three"
import { GLTFExporter } from "three/examples/jsm/exporters/GLTFExporter.js"
import { partTitle } from "../../describe/partNames"
import type { Evaluation } from "../../scene/evaluate"
import { createLooks } from "../../view3d/looks"
import { drawPart } from "../../view3d/parts"
import { putAt } from "../../view3d/shapes/placing"
import { unitSphere } from "../../view3d/shapes/solids"
import { takeAway } from "../../words/takeAway"

/** Radius of the ball at the balance point, m. */
const BALANCE_BALL = 0.008

/**
 * The bow as solids for other programs, binary glTF 2.0: metres, bow axes (x forward, y up, z to the archer's right, the
 * grip's pivot at the origin), a named node a part with its mass in its extras, and a ball at the balance point.
 * `styles` has the colours of the picture's parts.
 */
export async function bowGlb(evaluation: Evaluation, styles: CSSStyleDeclaration): Promise<ArrayBuffer> {
  const { scene, now } = evaluation
  const looks = createLooks(styles)
  const whole = new Group()
  whole.name = scene.name
  const drawings = now.parts.map((part) => {
    const drawing = drawPart(part.kind, part.path, looks)
    drawing.update(part, { evaluation })
    const solid = solidsOf(drawing.object)
    solid.name = partTitle(scene, part.path)
    solid.userData = { path: part.path, massG: part.mass * 1e3 }
    whole.add(solid)
    return drawing
  })
  const ball = new Mesh(unitSphere, looks.mark("balance"))
  ball.name = takeAway.balance
  putAt(ball, now.centre)
  ball.scale.setScalar(BALANCE_BALL)
  whole.add(ball)
  try {
    const made = await new GLTFExporter().parseAsync(whole, { binary: true })
    if (!(made instanceof ArrayBuffer)) throw new Error(takeAway.noBytes)
    return made
  } finally {
    for (const { dispose } of drawings) dispose?.()
    looks.dispose()
  }
}

/** What is solid of a part's drawing, each piece a mesh of its own: few programs know instances, and none our outlines. */
function solidsOf(drawn: Object3D): Group {
  const solids = new Group()
  drawn.updateMatrixWorld(true)
  const put = (mesh: Mesh, place: Matrix4) => {
    const copy = new Mesh(mesh.geometry, mesh.material)
    place.decompose(copy.position, copy.quaternion, copy.scale)
    solids.add(copy)
  }
  drawn.traverseVisible((each) => {
    if (!(each instanceof Mesh) || !(each.material instanceof MeshStandardMaterial)) return
    if (!(each instanceof InstancedMesh)) return put(each, each.matrixWorld)
    for (let index = 0; index < each.count; index++) {
      const place = new Matrix4()
      each.getMatrixAt(index, place)
      put(each, place.premultiply(each.matrixWorld))
    }
  })
  return solids
}
