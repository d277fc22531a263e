import type { Vec3 } from "../core/solids"

/** Where a world point falls in the picture. */
export interface Projected {
  /** CSS px from the picture's left edge. */
  readonly x: number
  /** CSS px from the picture's top edge. */
  readonly y: number
  /** Smaller is nearer. */
  readonly depth: number
  /** In front of the camera; says nothing about other things in between. */
  readonly visible: boolean
}

/** The way from the world to one picture of it, whichever draws it. */
export interface Projector {
  /** World axes, m. */
  project(world: Vec3): Projected
  /** `listener` is called after each change of camera or size; the returned function ends that. */
  subscribe(listener: () => void): () => void
}
