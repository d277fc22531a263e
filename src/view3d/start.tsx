import { addAfterEffect, createRoot, extend } from "@react-three/fiber"
import { Component, type ReactNode } from "react"
import { DirectionalLight, Group, HemisphereLight, Mesh, PlaneGeometry, WebGLRenderer } from "three"
import { STACKED } from "../picture/figuresPlace"
import type { Projector } from "../picture/projector"
import type { Bench } from "../state/bench"
import { picture3d } from "../words/picture3d"
import { FIELD } from "./camera/view"
import { createCard } from "./card"
import { createPicture } from "./createPicture"
import { createLabels } from "./labels"
import { createLooks } from "./looks"
import { PictureContext } from "./picture"
import { Stage } from "./Stage"
import { followTheme } from "./theme"

// Only the classes that appear as elements, so that the rest of three need not be loaded.
extend({ DirectionalLight, Group, HemisphereLight, Mesh, PlaneGeometry })

export interface Wishes {
  readonly onProjector: (projector: Projector | null) => void
  readonly onFirstFrame: () => void
  /** In words for the coach, to stand inside a sentence: why there is no 3D picture. */
  readonly onFailure: (reason: string) => void
}

/** A lost graphics context often comes back by itself, for example after sleep; wait this long before giving up, ms. */
const PATIENCE = 2500
/** Sharper than this cannot be seen and costs time, device px to a CSS px. */
const SHARPEST = 2

/** Builds the picture inside `host`, an empty positioned element; the returned function takes it all away again. */
export function startPicture(host: HTMLElement, bench: Bench, wishes: Wishes): () => void {
  const canvas = document.createElement("canvas")
  const context = canvas.getContext("webgl2", { antialias: true, alpha: true, powerPreference: "high-performance" })
  if (context === null) {
    wishes.onFailure(picture3d.noWebgl)
    return () => {}
  }
  const words = document.createElement("div")
  words.className = "view3d-labels"
  words.ariaHidden = "true"
  host.append(canvas, words)

  let ended = false
  const fail = (reason: string) => {
    if (!ended) wishes.onFailure(reason)
  }
  let patience: ReturnType<typeof setTimeout> | undefined
  const lost = (event: Event) => {
    event.preventDefault()
    if (!ended) patience = setTimeout(() => fail(picture3d.lost), PATIENCE)
  }
  canvas.addEventListener("webglcontextlost", lost)

  const looks = createLooks(getComputedStyle(host))
  // Asked at every frame: looked up once.
  const [withFigures, stacked] = [host.closest(".bench-picture") !== null, matchMedia(STACKED)]
  const figuresOver = () => withFigures && !stacked.matches
  const picture = createPicture(bench, looks, createLabels(words), figuresOver)
  const card = createCard(words)
  const size = () => ({ width: host.clientWidth, height: host.clientHeight, top: 0, left: 0 })
  const root = createRoot(canvas)
  const stops: (() => void)[] = []

  const begin = async () => {
    const gl = new WebGLRenderer({ canvas, context, antialias: true, alpha: true })
    gl.setClearColor(0x000000, 0)
    await root.configure({
      gl,
      size: size(),
      dpr: Math.min(SHARPEST, window.devicePixelRatio || 1),
      frameloop: "demand",
      flat: true,
      camera: { fov: (FIELD * 180) / Math.PI, near: 0.05, far: 40, position: [0, 0, 4] },
    })
    if (ended) return
    const store = root.render(
      <Guard onError={() => fail(picture3d.broken)}>
        <PictureContext value={picture}>
          <Stage host={host} card={card} onProjector={wishes.onProjector} />
        </PictureContext>
      </Guard>,
    )
    const draw = () => store.getState().invalidate()
    picture.attach(draw)
    stops.push(followTheme(looks, draw))
    const restored = () => {
      clearTimeout(patience)
      draw()
    }
    canvas.addEventListener("webglcontextrestored", restored)
    const watcher = new ResizeObserver(() => {
      const { width, height } = size()
      if (width > 0 && height > 0) store.getState().setSize(width, height)
    })
    watcher.observe(host)
    stops.push(() => watcher.disconnect())
    const unsubscribe = addAfterEffect(() => {
      if (store.getState().gl.info.render.frame === 0) return
      unsubscribe()
      wishes.onFirstFrame()
    })
    stops.push(unsubscribe)
  }
  begin().catch(() => fail(picture3d.broken))

  return () => {
    ended = true
    clearTimeout(patience)
    for (const stop of stops) stop()
    root.unmount()
    picture.dispose()
    looks.dispose()
    host.replaceChildren()
  }
}

/** Catches what goes wrong inside the picture, so that the rest of the page goes on. */
class Guard extends Component<{ onError: () => void; children: ReactNode }, { broken: boolean }> {
  override state = { broken: false }
  static getDerivedStateFromError = () => ({ broken: true })
  override componentDidCatch() {
    this.props.onError()
  }
  override render() {
    return this.state.broken ? null : this.props.children
  }
}
