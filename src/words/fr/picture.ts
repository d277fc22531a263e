import type { picture as english } from "../picture"

export const picture: typeof english = {
  flat: "L’arc vu de droite et de dessus, à l’échelle",
  above: "vu de dessus",
  toTarget: "vers la cible",
  zone: "équilibre visé",
  onLevel: (arm) => `${arm} à plat`,
  handle: (part, number) => `${part}, ${number}`,
  stem: "longueur de la tige",
  length: "longueur",
  splay: "écartement",
  droop: "inclinaison vers le bas",
  height: "hauteur",
  forward: "avancée",
  tilt: "inclinaison vers le haut",
  turn: "rotation à gauche",
  draw: "Armement",
  nock: "Point d’encochage au-dessus du grip",
  elbow: "Coude de corde au-dessus de la ligne de flèche",
}
