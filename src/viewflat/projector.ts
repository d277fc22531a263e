import type { Vec3 } from "../core/solids"
import type { Pane } from "../picture/handle"
import type { PanedProjector } from "../picture/panes"
import type { Projector } from "../picture/projector"
import { flatten, type Frames, onPage } from "./frames"

/** The flat drawings' projector, and the way to tell it of other frames. */
export interface FlatProjector extends PanedProjector {
  /** The same frames again change nothing and tell nobody. */
  use(frames: Frames): void
}

/** Nearer is further right in the side drawing and higher in the one from above. */
const depth: Readonly<Record<Pane, (world: Vec3) => number>> = { side: ([, , z]) => -z, top: ([, y]) => -y }

export function createFlatProjector(first: Frames): FlatProjector {
  let frames = first
  const listeners = new Set<() => void>()
  const subscribe = (listener: () => void) => {
    listeners.add(listener)
    return () => listeners.delete(listener)
  }
  const into = (pane: Pane): Projector => ({
    subscribe,
    project: (world) => ({ ...onPage(frames[pane], flatten[pane](world)), depth: depth[pane](world), visible: true }),
  })
  const panes = { side: into("side"), top: into("top") }
  return {
    ...panes.side,
    pane: (name) => panes[name],
    use(next) {
      if (next === frames) return
      frames = next
      for (const listener of [...listeners]) listener()
    },
  }
}
