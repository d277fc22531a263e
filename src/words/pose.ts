import { spoken } from "./language"

/** How the bow is held. */
export const pose = spoken("pose", {
  brace: "at brace",
  drawn: (percent: string) => `${percent} drawn`,
  full: "full draw",
  /** Where the front points; `angle` is "12°". */
  up: (angle: string) => `${angle} up`,
  down: (angle: string) => `${angle} down`,
  level: "level",
  /** Where the top of the bow leans. */
  right: (angle: string) => `${angle} right`,
  left: (angle: string) => `${angle} left`,
  upright: "upright",
})
