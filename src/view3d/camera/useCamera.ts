import { useThree } from "@react-three/fiber"
import { useLayoutEffect, useRef } from "react"
import type { PerspectiveCamera } from "three"
import { usePicture } from "../picture"
import { type CameraMan, createCameraMan } from "./cameraMan"
import { dragCamera } from "./dragging"

/** The camera: presets from the state, mouse and touch on the canvas, keys from the picture's element `host`. */
export function useCamera(host: HTMLElement): void {
  const picture = usePicture()
  const get = useThree((state) => state.get)
  const width = useThree((state) => state.size.width)
  const height = useThree((state) => state.size.height)
  const man = useRef<CameraMan | null>(null)

  useLayoutEffect(() => {
    const { camera, gl } = get()
    const made = createCameraMan(picture, camera as PerspectiveCamera, () => get().size)
    man.current = made
    const pressed = (event: KeyboardEvent) => {
      if (event.target !== host || event.ctrlKey || event.metaKey || event.altKey) return
      if (made.key(event.key, event.shiftKey)) event.preventDefault()
    }
    host.addEventListener("keydown", pressed)
    const endDrags = dragCamera(gl.domElement, made)
    return () => {
      host.removeEventListener("keydown", pressed)
      endDrags()
      made.dispose()
      man.current = null
    }
  }, [picture, get, host])

  // biome-ignore lint/correctness/useExhaustiveDependencies: runs for the sizes themselves, which it reads elsewhere
  useLayoutEffect(() => man.current?.resized(), [width, height])
}
