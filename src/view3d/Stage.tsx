import { Grid } from "@react-three/drei/core/Grid"
import { useThree } from "@react-three/fiber"
import {
  lazy,
  type RefObject,
  Suspense,
  useEffect,
  useLayoutEffect,
  useRef,
  useState,
  useSyncExternalStore,
} from "react"
import type { Group, Mesh, ShaderMaterial } from "three"
import { hover, select } from "../commands/bench"
import type { Projector } from "../picture/projector"
import { tappedPlace } from "../picture/tappedPlace"
import { givePoint, pointAsked } from "../state/picking"
import { useCamera } from "./camera/useCamera"
import type { Card } from "./card"
import { createHighlighter } from "./highlight"
import { balanceOverlay } from "./overlays/balance"
import { groundOverlay } from "./overlays/ground"
import { targetOverlay } from "./overlays/targetZone"
import { arcsOverlay, ellipsoidOverlay } from "./overlays/turning"
import { mountsDrawing } from "./parts/fixed"
import { Parts, Piece } from "./Drawings"
import { type Picture, usePicture } from "./picture"
import { pointAt } from "./pointer"
import { type Hit, pick } from "./pointing"
import { usePlacing } from "./usePlacing"
import { setRotation } from "./shapes/placing"

interface StageProps {
  readonly host: HTMLElement
  readonly card: Card
  readonly onProjector: (projector: Projector | null) => void
}

const mounts = ({ looks }: Picture) => mountsDrawing(looks)
const target = ({ looks, labels }: Picture) => targetOverlay(looks, labels)
const ellipsoid = ({ looks, labels }: Picture) => ellipsoidOverlay(looks, labels)
const arcs = ({ looks, labels }: Picture) => arcsOverlay(looks, labels)
const balance = ({ looks, labels }: Picture) => balanceOverlay(looks, labels)
const ground = ({ looks, labels }: Picture) => groundOverlay(looks, labels)

/** Everything in the picture: lights, the bow in its pose, what is drawn about it, the ground, the camera. */
export function Stage({ host, card, onProjector }: StageProps) {
  const picture = usePicture()
  const bow = useRef<Group>(null)
  const parts = useRef<Group>(null)
  useLayoutEffect(
    () =>
      picture.watch(({ evaluation }) => {
        if (bow.current === null) return
        setRotation(bow.current.matrix, evaluation.now.rotation)
        bow.current.matrixWorldNeedsUpdate = true
      }),
    [picture],
  )
  useCamera(host)
  useHighlight(parts)
  usePointing(parts)
  usePlacing(card, onProjector)
  return (
    <>
      <hemisphereLight args={[0xffffff, 0x8a8378, 1.7]} />
      <directionalLight position={[1.5, 3, 2.5]} intensity={2.1} />
      <directionalLight position={[-2, 1, -2.5]} intensity={0.9} />
      <group ref={bow} matrixAutoUpdate={false}>
        <group ref={parts}>
          <Parts />
          <Piece make={mounts} />
        </group>
        <Piece make={target} />
        <Piece make={ellipsoid} />
        <Piece make={arcs} />
      </group>
      <Piece make={balance} />
      <Piece make={ground} />
      <GroundGrid />
      <Further />
    </>
  )
}

const FurtherDrawings = lazy(() => import("./FurtherDrawings"))

/** What only some bows need, fetched with the first of them, so that the first view need not wait for it. */
function Further() {
  const picture = usePicture()
  const wanted = useSyncExternalStore(picture.bench.store.subscribe, () => {
    const { evaluation, hillDeg, played, other } = picture.frame()
    return evaluation.now.pose.draw > 0 || hillDeg !== 0 || played !== null || other !== null
  })
  const [once, setOnce] = useState(wanted)
  if (wanted && !once) setOnce(true)
  return <Suspense fallback={null}>{once && <FurtherDrawings />}</Suspense>
}

function GroundGrid() {
  const picture = usePicture()
  const grid = useRef<Mesh>(null)
  useLayoutEffect(() => {
    const mesh = grid.current
    if (mesh === null) return
    const { uniforms } = mesh.material as ShaderMaterial
    picture.looks.follow("line", (colour) => uniforms.cellColor?.value.copy(colour))
    picture.looks.follow("line-strong", (colour) => uniforms.sectionColor?.value.copy(colour))
    return picture.watch(({ state, hillDeg, ground: level }) => {
      mesh.visible = state.preferences.show.ground && hillDeg === 0
      mesh.position.y = level - 0.002
      const inches = state.preferences.lengthUnit === "in"
      if (uniforms.cellSize !== undefined) uniforms.cellSize.value = inches ? 0.1016 : 0.1
      if (uniforms.sectionSize !== undefined) uniforms.sectionSize.value = inches ? 0.508 : 0.5
    })
  }, [picture])
  return (
    <Grid
      ref={grid}
      args={[8, 8]}
      cellColor="#808080"
      sectionColor="#808080"
      cellThickness={0.7}
      sectionThickness={1}
      fadeDistance={4.2}
      fadeStrength={1.6}
      fadeFrom={0}
      side={2}
      renderOrder={-2}
    />
  )
}

function useHighlight(parts: RefObject<Group | null>) {
  const picture = usePicture()
  useEffect(() => {
    if (parts.current === null) return
    return picture.watch(createHighlighter(parts.current, picture.looks))
  }, [picture, parts])
}

function usePointing(parts: RefObject<Group | null>) {
  const { bench, frame } = usePicture()
  const get = useThree((state) => state.get)
  useEffect(() => {
    const { gl } = get()
    let last: Hit | null = null
    /** A tap that someone waits for is a place on the bow and chooses nothing. */
    const asPlace = (path: string | null): boolean => {
      const part = path === null ? undefined : frame().parts.get(path)
      if (part === undefined || last === null || parts.current === null || !pointAsked()) return false
      const { x, y, z } = parts.current.worldToLocal(last.at.clone())
      return givePoint(tappedPlace(part, [x, y, z]))
    }
    return pointAt(gl.domElement, {
      under: (x, y, reach) => {
        const { camera, size } = get()
        const { width, height } = size
        last = parts.current === null ? null : pick(camera, parts.current, { x, y, width, height }, reach)
        return last?.path ?? null
      },
      hovered: (path) => hover.run(bench, path),
      tapped: (path) => asPlace(path) || select.run(bench, path),
    })
  }, [bench, frame, get, parts])
}
