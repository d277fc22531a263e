import { spoken } from "./language"

/** Whether the archer shoots right- or left-handed. */
export const handedness = spoken("handedness", {
  shoots: "Archer shoots",
  right: "right-handed",
  left: "left-handed",
  mirrors:
    "This mirrors only how the riser is drawn. The numbers you entered (sight, mounts, side rods) stay as they are.",
})
