import type { partsTable as english } from "../partsTable"

export const partsTable: typeof english = {
  place: (forward, up, side) => `avant ${forward}, haut ${up}, côté ${side}`,
}
