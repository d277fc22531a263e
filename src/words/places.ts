import { spoken } from "./language"

/** Where something is along one axis through the grip. `far` is a distance with its unit. */
export const places = spoken("places", {
  ahead: (far: string) => `${far} ahead`,
  behind: (far: string) => `${far} behind`,
  atGrip: "at the grip",
  above: (far: string) => `${far} above`,
  below: (far: string) => `${far} below`,
  level: "level with the grip",
  right: (far: string) => `${far} right`,
  left: (far: string) => `${far} left`,
  middle: "in the middle",
})
