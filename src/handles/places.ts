import { multiply } from "../core/solids"
import { spreadApart } from "../picture/apart"
import type { ScreenPoint } from "../picture/drag"
import type { Handle } from "../picture/handle"
import { paneOf } from "../picture/panes"
import type { Projected, Projector } from "../picture/projector"
import type { BenchState } from "../state/bench"
import { holds } from "./current"
import type { PictureSize } from "./tip"

/** Where one knob belongs in the picture. */
export interface Placed {
  /** The handle's key, or `extender <chain>`. */
  readonly id: string
  readonly handle: Handle | null
  readonly at: Projected
  /** The way its value grows in the picture, degrees clockwise from right; null where it has none to show. */
  readonly turn: number | null
  /** Where its leader line goes. */
  readonly foot: ScreenPoint
}

/** The id of a chain's extender switch. */
export const switchId = (path: string): string => `extender ${path}`

/** Everything in the picture that can be taken hold of, in the order of the Tab key. */
export function placesOf(state: BenchState, projector: Projector, withSwitches: boolean): Placed[] {
  const { rotation } = state.evaluation.now
  const { handles, switches } = holds(state)
  const edgeOn = !("pane" in projector) && (state.camera === "top" || state.camera === "archer")
  const ofHandle = (handle: Handle): Placed => {
    const { project } = paneOf(projector, handle.seen)
    const seen = (value: number) => project(multiply(rotation, handle.place(value)))
    const [at, next] = [seen(handle.value), seen(handle.value + handle.field.step)]
    const still = handle.kind === "place" || (next.x === at.x && next.y === at.y)
    const turn = still ? null : Math.round((Math.atan2(next.y - at.y, next.x - at.x) * 180) / Math.PI)
    const foot = handle.hub === null ? at : project(multiply(rotation, handle.hub))
    // From above and from behind the archer the line of pull lies edge-on over the string.
    const hidden = edgeOn && handle.lifts
    return { id: handle.key, handle, at: hidden ? { ...at, visible: false } : at, turn, foot }
  }
  const places = handles.map(ofHandle)
  if (!withSwitches) return places
  for (const { path, place, seen } of switches) {
    const at = paneOf(projector, seen).project(multiply(rotation, place))
    places.push({ id: switchId(path), handle: null, at, turn: null, foot: at })
  }
  return places
}

/**
 * How far each visible knob is to stand from its place, so that none lies on another, on the balance point or, where its
 * place is in the picture, across the picture's edge.
 */
export function shiftsOf(
  places: readonly Placed[],
  state: BenchState,
  projector: Projector,
  spacing: number,
  { width, height }: PictureSize,
): Map<string, ScreenPoint> {
  const { rotation, centre } = state.evaluation.now
  const visible = places.filter(({ at }) => at.visible)
  // The string is thin and mostly bare: its knob stays on it, and others give way.
  visible.sort((a, b) => Number(isDraw(b)) - Number(isDraw(a)))
  const balance = paneOf(projector, "side").project(multiply(rotation, centre))
  const within = ({ x, y }: ScreenPoint, edge: number) =>
    x >= edge && x <= width - edge && y >= edge && y <= height - edge
  const wanted = (place: ScreenPoint, of: ScreenPoint) => !within(of, 0) || within(place, spacing / 2)
  const shifts = spreadApart([balance, ...visible.map(({ at }) => at)], spacing, wanted)
  return new Map(visible.map(({ id }, index) => [id, shifts[index + 1]!]))
}

const isDraw = ({ handle }: Placed): boolean => handle?.kind === "draw"
