import type { MountName } from "./schema"

/** The places on a riser that can carry a chain, in the order they are listed everywhere. */
export const mountNames = ["front", "upper", "lower", "back"] as const satisfies readonly MountName[]
