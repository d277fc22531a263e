import { OrbitControls } from "@react-three/drei/core/OrbitControls"
import { useThree } from "@react-three/fiber"
import { type ComponentRef, useLayoutEffect, useRef } from "react"
import type { PerspectiveCamera } from "three"
import { usePicture } from "../picture"
import { FURTHEST, NEAREST } from "./keys"
import { type CameraMan, createCameraMan } from "./cameraMan"

/** The orbiting camera: presets from the state, mouse and touch through the controls, keys from the picture's element. */
export function CameraRig({ host }: { host: HTMLElement }) {
  const picture = usePicture()
  const camera = useThree((state) => state.camera) as PerspectiveCamera
  const get = useThree((state) => state.get)
  const width = useThree((state) => state.size.width)
  const height = useThree((state) => state.size.height)
  const controls = useRef<ComponentRef<typeof OrbitControls>>(null)
  const man = useRef<CameraMan | null>(null)

  useLayoutEffect(() => {
    if (controls.current === null) return
    const made = createCameraMan(picture, camera, controls.current, () => get().size)
    man.current = made
    const pressed = (event: KeyboardEvent) => {
      if (event.target !== host || event.ctrlKey || event.metaKey || event.altKey) return
      if (made.key(event.key, event.shiftKey)) event.preventDefault()
    }
    host.addEventListener("keydown", pressed)
    return () => {
      host.removeEventListener("keydown", pressed)
      made.dispose()
      man.current = null
    }
  }, [picture, camera, get, host])

  // biome-ignore lint/correctness/useExhaustiveDependencies: runs for the sizes themselves, which it reads elsewhere
  useLayoutEffect(() => man.current?.resized(), [width, height])

  return (
    <OrbitControls
      ref={controls}
      enableDamping={false}
      screenSpacePanning
      minDistance={NEAREST}
      maxDistance={FURTHEST}
      onStart={() => man.current?.grabbed()}
      onChange={() => man.current?.moved()}
      onEnd={() => man.current?.released()}
    />
  )
}
