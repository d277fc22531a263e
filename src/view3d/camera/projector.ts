import { type Camera, Matrix4, Vector3 } from "three"
import type { Projector } from "../../picture/projector"

export interface LiveProjector extends Projector {
  /**
   * To be called once a frame, before anything is placed: tells the listeners when camera or size are others, and says
   * whether they are.
   */
  refresh(width: number, height: number): boolean
}

/** Projects through a three camera. Numbers are those of the last `refresh`. */
export function createProjector(camera: Camera): LiveProjector {
  const listeners = new Set<() => void>()
  const seen = new Matrix4()
  const through = new Matrix4()
  const point = new Vector3()
  let [width, height] = [0, 0]
  return {
    project(world) {
      point.set(world[0], world[1], world[2]).applyMatrix4(camera.matrixWorldInverse)
      const depth = -point.z
      point.applyMatrix4(camera.projectionMatrix)
      return { x: ((point.x + 1) / 2) * width, y: ((1 - point.y) / 2) * height, depth, visible: depth > 0 }
    },
    subscribe(listener) {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    refresh(newWidth, newHeight) {
      camera.updateMatrixWorld()
      through.multiplyMatrices(camera.projectionMatrix, camera.matrixWorldInverse)
      if (width === newWidth && height === newHeight && through.equals(seen)) return false
      ;[width, height] = [newWidth, newHeight]
      seen.copy(through)
      for (const listener of [...listeners]) listener()
      return true
    },
  }
}
