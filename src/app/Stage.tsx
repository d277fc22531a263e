import { Component, lazy, type ReactNode, Suspense, useCallback, useEffect, useRef, useState } from "react"
import { lookFrom } from "../commands/bench"
import type { Projector } from "../picture/projector"
import type { CameraPreset } from "../state/bench"
import { playedNow } from "../state/played"
import { useBench, useLive } from "../state/useBench"
import { FlatView } from "../viewflat/FlatView"
import { page } from "../words/page"
import "./stage.css"

const View3d = lazy(() => import("../view3d/View3d"))
const HandleLayer = lazy(() => import("../handles/HandleLayer"))

/** Which drawing the coach sees: the flat one stands until the 3D view has drawn, and for good where it cannot. */
type Drawing = "loading" | "solid" | "flat"

const presets: readonly CameraPreset[] = ["side", "top", "archer", "free"]

/** The picture of the bow with its handles. */
export function Stage() {
  const bench = useBench()
  const camera = useLive((state) => state.camera)
  const [drawing, setDrawing] = useState<Drawing>("loading")
  const [failure, setFailure] = useState<string | null>(null)
  const [flatProjector, setFlatProjector] = useState<Projector | null>(null)
  const [solidProjector, setSolidProjector] = useState<Projector | null>(null)
  const drawn = useCallback(() => setDrawing((now) => (now === "loading" ? "solid" : now)), [])
  const failed = useCallback((reason: string) => {
    setFailure(reason)
    setSolidProjector(null)
    setDrawing("flat")
  }, [])
  const solid = drawing === "solid"
  const moving = useLive((state) => playedNow(state) !== null)
  const projector = solid ? solidProjector : flatProjector

  return (
    <div className="stage">
      {!solid && <FlatView onProjector={setFlatProjector} />}
      {(drawing !== "flat" || failure === null) && (
        <div className={solid ? "stage-solid" : "stage-solid stage-waiting"}>
          <Guard onFailure={failed}>
            <Suspense fallback={null}>
              {drawing !== "flat" && <View3d onProjector={setSolidProjector} onFirstFrame={drawn} onFailure={failed} />}
            </Suspense>
          </Guard>
        </div>
      )}
      {projector !== null && (
        <Suspense fallback={null}>
          <div className="stage-handles" inert={moving}>
            <HandleLayer projector={projector} />
          </div>
          {drawing !== "loading" && <Ready />}
        </Suspense>
      )}
      {failure !== null && <p className="stage-plain-notice">{page.no3d(failure)}</p>}
      <fieldset className="stage-views" aria-label={page.lookFrom}>
        {failure === null &&
          presets.map((name) => (
            <button
              key={name}
              type="button"
              aria-pressed={solid && camera === name}
              onClick={() => {
                if (!solid) setDrawing("loading")
                lookFrom.run(bench, name)
              }}
            >
              {page.views[name]}
            </button>
          ))}
        {failure === null && (
          <button type="button" aria-pressed={drawing === "flat"} onClick={() => setDrawing("flat")}>
            {page.views.flat}
          </button>
        )}
      </fieldset>
    </div>
  )
}

/** Says to tests and tools that the first picture, its handles and the numbers stand. */
function Ready() {
  const done = useRef(false)
  useEffect(() => {
    if (done.current) return
    done.current = true
    document.documentElement.dataset.ready = "true"
  }, [])
  return null
}

/** Keeps a failing 3D view from taking the numbers with it. */
class Guard extends Component<{ onFailure(reason: string): void; children: ReactNode }, { failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  override componentDidCatch(reason: Error) {
    this.props.onFailure(reason.message)
  }

  override render() {
    return this.state.failed ? null : this.props.children
  }
}
