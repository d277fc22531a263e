import type { places as english } from "../places"

export const places: typeof english = {
  ahead: (far) => `${far} devant`,
  behind: (far) => `${far} derrière`,
  atGrip: "au droit du grip",
  above: (far) => `${far} plus haut`,
  below: (far) => `${far} plus bas`,
  level: "à hauteur du grip",
  right: (far) => `${far} à droite`,
  left: (far) => `${far} à gauche`,
  middle: "au milieu",
}
