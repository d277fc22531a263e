import { InstancedMesh, type Material, Mesh, type Object3D } from "three"
import type { Looks } from "./looks"
import type { PictureFrame } from "./picture"

interface Outlined {
  readonly mesh: Mesh
  readonly plain: Material
  readonly outlines: readonly Mesh[]
}

/** Draws a line around the parts that are pointed at or selected, and brightens them. */
export function createHighlighter(parts: Object3D, looks: Looks): (frame: PictureFrame) => void {
  const lit = new Map<string, Outlined[]>()

  const put = (path: string) => {
    const object = parts.children.find((child) => child.userData.path === path)
    if (object === undefined) return
    const meshes: Mesh[] = []
    object.traverse((each) => {
      // Lines have no normals to move outward along.
      if (each instanceof Mesh && each.geometry.getAttribute("normal") !== undefined) meshes.push(each)
    })
    lit.set(
      path,
      meshes.map((mesh) => {
        const plain = mesh.material as Material
        const outlines = looks.outlines.map((material, order) => hull(mesh, material, order))
        mesh.material = looks.lit(plain)
        mesh.add(...outlines)
        return { mesh, plain, outlines }
      }),
    )
  }

  const take = (path: string) => {
    for (const { mesh, plain, outlines } of lit.get(path) ?? []) {
      mesh.material = plain
      mesh.remove(...outlines)
    }
    lit.delete(path)
  }

  return ({ state, parts: named }) => {
    const wanted = new Set(
      [state.hovered, state.selected].filter((path): path is string => path !== null && named.has(path)),
    )
    for (const path of [...lit.keys()]) if (!wanted.has(path)) take(path)
    for (const path of wanted) {
      // Its drawing may have been made anew since.
      const stale = lit.get(path)?.some(({ mesh }) => !isWithin(mesh, parts))
      if (stale) take(path)
      if (!lit.has(path)) put(path)
      for (const { mesh, outlines } of lit.get(path) ?? []) {
        for (const outline of outlines) {
          outline.geometry = mesh.geometry
          if (outline instanceof InstancedMesh && mesh instanceof InstancedMesh) outline.count = mesh.count
        }
      }
    }
  }
}

function hull(mesh: Mesh, material: Material, order: number): Mesh {
  const made = mesh instanceof InstancedMesh ? sharing(mesh, material) : new Mesh(mesh.geometry, material)
  made.frustumCulled = false
  made.raycast = () => {}
  made.renderOrder = order - 2
  return made
}

function sharing(mesh: InstancedMesh, material: Material): InstancedMesh {
  const made = new InstancedMesh(mesh.geometry, material, 0)
  made.instanceMatrix = mesh.instanceMatrix
  made.count = mesh.count
  return made
}

function isWithin(object: Object3D, ancestor: Object3D): boolean {
  for (let here: Object3D | null = object; here !== null; here = here.parent) if (here === ancestor) return true
  return false
}
