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

/** A rectangle of the picture, CSS px from its left and top edges. */
export interface Box {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

/** The way from the world to one picture of it, whichever draws it. */
export interface Projector {
  /** World axes, m. */
  project(world: Vec3): Projected
  /** `listener` is called after each change of camera or size; the returned function ends that. */
  subscribe(listener: () => void): () => void
  /**
   * Tells the picture where something stands over it now, so that its own words keep off; for pictures that place their
   * words anew for every change. To be called after each change of the state, with the same boxes too.
   */
  occupy?(boxes: readonly Box[]): void
}
