import type { PerspectiveCamera, Vector3 } from "three"
import { lookFrom } from "../../commands/bench"
import type { CameraPreset } from "../../state/bench"
import type { Picture } from "../picture"
import { allInside, eyeOf, fitView, viewAxes } from "./fit"
import { keyView } from "./keys"
import { between, directions, eased, HALF_HEIGHT, insetsFor, type View } from "./view"

/** How long the way from one preset to another takes, ms. */
const MOVE = 420

interface Controls {
  readonly target: Vector3
  update(): unknown
}

/** Moves the camera: to presets, by keys, and after the bow when it outgrows the picture. */
export interface CameraMan {
  /** The person began, moved and ended a drag, pinch or wheel turn. */
  grabbed(): void
  moved(): void
  released(): void
  resized(): void
  /** Whether the key meant something. */
  key(key: string, shift: boolean): boolean
  dispose(): void
}

export function createCameraMan(
  picture: Picture,
  camera: PerspectiveCamera,
  controls: Controls,
  size: () => { width: number; height: number },
): CameraMan {
  const { store } = picture.bench
  let preset: CameraPreset = store.getState().camera
  let scene = store.getState().scene
  let byHand = false
  let request = 0

  const aspect = () => size().width / Math.max(1, size().height)
  const points = () => picture.frame().reach

  const presetView = (name: CameraPreset): View => {
    const { azimuth, elevation } = directions[name]
    const { width, height } = size()
    const insets = insetsFor(Math.max(1, width), Math.max(1, height))
    const fit = fitView(points(), viewAxes(azimuth, elevation), HALF_HEIGHT, aspect(), insets)
    return { azimuth, elevation, ...fit }
  }

  const view = (): View => {
    const { target } = controls
    const [x, y, z] = [camera.position.x - target.x, camera.position.y - target.y, camera.position.z - target.z]
    const distance = Math.hypot(x, y, z)
    return {
      azimuth: Math.atan2(x, z),
      elevation: Math.asin(Math.min(1, Math.max(-1, y / distance))),
      distance,
      target: [target.x, target.y, target.z],
    }
  }

  const apply = (to: View) => {
    const eye = eyeOf(to, viewAxes(to.azimuth, to.elevation))
    controls.target.set(...(to.target as [number, number, number]))
    camera.position.set(...(eye as [number, number, number]))
    controls.update()
  }

  const stop = () => {
    cancelAnimationFrame(request)
    request = 0
  }

  const moveTo = (to: View) => {
    stop()
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
      apply(to)
      return
    }
    const from = view()
    let began = -1
    const step = (now: number) => {
      if (began < 0) began = now
      const t = Math.min(1, (now - began) / MOVE)
      apply(between(from, to, eased(t)))
      request = t < 1 ? requestAnimationFrame(step) : 0
    }
    request = requestAnimationFrame(step)
  }

  /** The camera is where the person put it: no preset any more. */
  const freed = () => {
    if (preset === "free") return
    preset = "free"
    lookFrom.run(picture.bench, "free")
  }

  const outgrown = () => {
    const now = view()
    const axes = viewAxes(now.azimuth, now.elevation)
    return !allInside(points(), eyeOf(now, axes), axes, HALF_HEIGHT, aspect())
  }

  const unsubscribe = store.subscribe((state) => {
    if (state.camera !== preset) {
      preset = state.camera
      scene = state.scene
      moveTo(presetView(preset))
      return
    }
    // While something is dragged the picture holds still; afterwards a preset makes room for what stuck out.
    if (state.gesture !== null || state.scene === scene) return
    scene = state.scene
    if (preset !== "free" && outgrown()) moveTo(presetView(preset))
  })

  apply(presetView(preset))

  return {
    grabbed() {
      byHand = true
      stop()
    },
    moved() {
      if (byHand) freed()
    },
    released() {
      byHand = false
    },
    resized() {
      stop()
      if (preset !== "free") apply(presetView(preset))
    },
    key(key, shift) {
      if (key === "Home") {
        preset = "side"
        lookFrom.run(picture.bench, "side")
        moveTo(presetView("side"))
        return true
      }
      const next = keyView(view(), key, shift)
      if (next === null) return false
      stop()
      apply(next)
      freed()
      return true
    },
    dispose() {
      stop()
      unsubscribe()
    },
  }
}
