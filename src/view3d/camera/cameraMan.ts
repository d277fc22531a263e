import type { PerspectiveCamera } from "three"
import { lookFrom } from "../../commands/bench"
import type { CameraPreset } from "../../state/bench"
import { playedNow } from "../../state/played"
import type { Picture } from "../picture"
import { allInside, eyeOf, fitView, viewAxes } from "./fit"
import { keyView } from "./keys"
import { figuresPlace } from "../../picture/figuresPlace"
import { between, directions, eased, HALF_HEIGHT, insetsFor, type View } from "./view"

/** How long the way from one preset to another takes, ms. */
const MOVE = 420

/** Moves the camera: to presets, by hand, by keys, and after the bow when it outgrows the picture. */
export interface CameraMan {
  view(): View
  /** The person moved the camera: it is no preset any more. */
  moved(view: View): void
  resized(): void
  /** Whether the key meant something. */
  key(key: string, shift: boolean): boolean
  dispose(): void
}

export function createCameraMan(
  picture: Picture,
  camera: PerspectiveCamera,
  size: () => { width: number; height: number },
): CameraMan {
  const { store } = picture.bench
  let preset: CameraPreset = store.getState().camera
  let scene = store.getState().scene
  let room = playedNow(store.getState())?.room ?? null
  let request = 0

  const aspect = () => size().width / Math.max(1, size().height)

  const presetView = (name: CameraPreset): View => {
    const { azimuth, elevation } = directions[name]
    const { width, height } = size()
    const insets = insetsFor(Math.max(1, width), Math.max(1, height), figuresPlace(width, !picture.figuresOver()))
    const fit = fitView(picture.frame().reach, viewAxes(azimuth, elevation), HALF_HEIGHT, aspect(), insets)
    return { azimuth, elevation, ...fit }
  }

  let now: View = presetView(preset)
  const apply = (to: View) => {
    now = to
    const [x, y, z] = eyeOf(to, viewAxes(to.azimuth, to.elevation))
    camera.position.set(x, y, z)
    camera.lookAt(to.target[0], to.target[1], to.target[2])
    picture.draw()
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
    const from = now
    let began = -1
    const step = (time: number) => {
      if (began < 0) began = time
      const t = Math.min(1, (time - began) / MOVE)
      apply(between(from, to, eased(t)))
      request = t < 1 ? requestAnimationFrame(step) : 0
    }
    request = requestAnimationFrame(step)
  }

  const moved = (to: View) => {
    stop()
    apply(to)
    if (preset === "free") return
    preset = "free"
    lookFrom.run(picture.bench, "free")
  }

  const outgrown = () => {
    const axes = viewAxes(now.azimuth, now.elevation)
    return !allInside(picture.frame().reach, eyeOf(now, axes), axes, HALF_HEIGHT, aspect())
  }

  const unsubscribe = store.subscribe((state) => {
    if (state.camera !== preset) {
      preset = state.camera
      scene = state.scene
      moveTo(presetView(preset))
      return
    }
    const wanted = playedNow(state)?.room ?? null
    if (wanted !== room) {
      // A motion is shown from where all of it can be seen, and afterwards the bow as before.
      const fits = wanted !== null && !outgrown()
      room = wanted
      if (preset !== "free" && !fits) moveTo(presetView(preset))
      return
    }
    // While something is dragged the picture holds still; afterwards a preset makes room for what stuck out.
    if (state.gesture !== null || state.scene === scene) return
    scene = state.scene
    if (preset !== "free" && outgrown()) moveTo(presetView(preset))
  })

  apply(now)

  return {
    view: () => now,
    moved,
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
      const next = keyView(now, key, shift)
      if (next === null) return false
      moved(next)
      return true
    },
    dispose() {
      stop()
      unsubscribe()
    },
  }
}
