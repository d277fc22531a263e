import type { Vec3 } from "../core/solids"
import type { Evaluation, WeighedPart } from "../scene/evaluate"
import type { Bench, BenchState } from "../state/bench"
import { beside } from "../state/compared"
import { pictured, playedNow } from "../state/played"
import type { Labels } from "./labels"
import type { Looks } from "./looks"
import type { Picture, PictureFrame, Update } from "./picture"
import { dimensionLevel, groundLevel, groundLine, hillEnd, reachPoints } from "./reach"

export interface LivePicture extends Picture {
  /** What asks for a new frame to be drawn; called once for every change of what is shown. */
  attach(invalidate: () => void): void
  dispose(): void
}

/** Follows the bench: one new picture state for each change that shows, told to every drawing in the order they came. */
export function createPicture(bench: Bench, looks: Looks, labels: Labels, figuresOver: () => boolean): LivePicture {
  const updates = new Set<Update>()
  let invalidate = () => {}
  let frame = frameOf(bench.store.getState(), null)
  const unsubscribe = bench.store.subscribe((state, before) => {
    if (!shows(state, before)) return
    frame = frameOf(state, frame)
    for (const update of [...updates]) update(frame)
    invalidate()
  })
  return {
    bench,
    looks,
    labels,
    frame: () => frame,
    figuresOver,
    draw: () => invalidate(),
    watch(update) {
      updates.add(update)
      update(frame)
      return () => updates.delete(update)
    },
    attach(draw) {
      invalidate = draw
    },
    dispose() {
      unsubscribe()
      updates.clear()
    },
  }
}

/** Whether two states differ in anything the picture shows. */
const shows = (a: BenchState, b: BenchState): boolean =>
  a.evaluation !== b.evaluation ||
  a.played !== b.played ||
  a.compared !== b.compared ||
  a.peeked !== b.peeked ||
  a.preferences !== b.preferences ||
  a.hovered !== b.hovered ||
  a.selected !== b.selected

function frameOf(state: BenchState, before: PictureFrame | null): PictureFrame {
  const played = playedNow(state)
  const evaluation = pictured(state)
  const other = beside(state)
  if (before !== null && before.evaluation === evaluation && before.other === other) return { ...before, state }
  const moved = { state, evaluation, played, other, parts: byPath(evaluation) }
  if (played !== null && before !== null && before.played?.room === played.room) {
    return { ...before, ...moved, level: dimensionLevel(evaluation, before.ground) }
  }
  // While a motion is played, ground and room are those of the whole of it, so that the picture stands still.
  const bow = (played?.room ?? [evaluation]).flatMap(reachPoints)
  const hillDeg = played?.hillDeg ?? evaluation.now.pose.slopeDeg
  const [ground, line] = [groundLevel(bow, hillDeg), groundLine(bow)]
  return {
    ...moved,
    ground,
    hillDeg,
    level: dimensionLevel(evaluation, ground),
    line,
    reach: [...bow, ...heldReach(state), [0, ground, 0], hillEnd(line.to, ground, hillDeg)],
  }
}

/** Room for a setup that is held to compare; one looked at in passing must not move the camera. */
function heldReach(state: BenchState): Vec3[] {
  if (state.compared === null) return []
  const held = beside({ ...state, peeked: null })
  return held === null ? [] : reachPoints(held.evaluation)
}

const byPath = ({ now }: Evaluation): ReadonlyMap<string, WeighedPart> =>
  new Map(now.parts.map((part) => [part.path, part]))
