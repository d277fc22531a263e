import { chainsOf } from "../address"
import type { MountName, Scene } from "../schema"

/** Mounts on whose chain or arms a swing weight hangs. */
export const mountsWithSwings = (scene: Scene): MountName[] =>
  chainsOf(scene)
    .filter(({ chain }) => chain.some(({ part }) => part === "swing"))
    .map(({ mount }) => mount)
