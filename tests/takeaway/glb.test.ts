import { Box3, Mesh, Vector3 } from "three"
import { GLTFLoader } from "three/examples/jsm/loaders/GLTFLoader.js"
import { afterEach, beforeEach, expect, test, vi } from "vitest"
import { evaluate } from "../../src/scene/evaluate"
import { bowGlb } from "../../src/takeaway/files/glb"
import { fullScene } from "../state/benches"

/** The one thing of a browser that the exporter needs. */
class Reader {
  result: ArrayBuffer | null = null
  onloadend: (() => void) | null = null
  readAsArrayBuffer(blob: Blob) {
    void blob.arrayBuffer().then((buffer) => {
      this.result = buffer
      this.onloadend?.()
    })
  }
}
beforeEach(() => {
  vi.stubGlobal("FileReader", Reader)
})
afterEach(() => vi.unstubAllGlobals())

const styles = { getPropertyValue: () => "#357a9c" } as unknown as CSSStyleDeclaration

test("the solids of a bow open in another reader: every part by name, with its mass, where the bench has it", async () => {
  const evaluation = evaluate(fullScene())
  if (!evaluation.ok) throw new Error("the full scene cannot be strung")
  const { now } = evaluation.value
  const bytes = await bowGlb(evaluation.value, styles)
  expect(new TextDecoder().decode(bytes.slice(0, 4))).toBe("glTF")
  const { scene } = await new GLTFLoader().parseAsync(bytes, "")
  scene.updateMatrixWorld(true)
  const parts = new Map<string, { box: Box3; massG: number }>()
  scene.traverse((node) => {
    const { path, massG } = node.userData
    if (typeof path === "string") parts.set(path, { box: new Box3().setFromObject(node), massG })
  })
  expect([...parts.keys()].sort()).toEqual(now.parts.map(({ path }) => path).sort())
  for (const { path, mass, axis } of now.parts) {
    const part = parts.get(path)!
    expect(part.massG).toBeCloseTo(mass * 1e3, 9)
    if (axis === undefined || axis.length === 0) continue
    const end = axis.start.map((start, index) => start + axis.direction[index]! * axis.length)
    // Drawn ends stand proud of the tube by less than a millimetre; discs have rounded rims.
    for (const at of [axis.start, end]) {
      expect(part.box.distanceToPoint(new Vector3(...at)), path).toBeLessThan(0.001)
    }
  }
  let ball: Vector3 | null = null
  scene.traverse((node) => {
    if (node instanceof Mesh && node.name.startsWith("Balance")) ball = node.getWorldPosition(new Vector3())
  })
  expect(ball).not.toBeNull()
  expect(ball!.distanceTo(new Vector3(...now.centre))).toBeLessThan(1e-6)
})
