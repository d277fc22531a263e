import type { numbersTable as english } from "../numbersTable"

export const numbersTable: typeof english = {
  key: "clé",
  what: "grandeur",
  value: "valeur",
  unit: "unité",
  spread: "plus ou moins, 95\u00a0%",
  draw: "Tenue\u00a0: part de l’allonge",
  slope: "Tenue\u00a0: pente",
  cant: "Tenue\u00a0: dévers",
  turn: (axis) => `Résistance à la rotation, ${axis}`,
  mass: (part) => `${part}\u00a0: masse`,
  forward: (part) => `${part}\u00a0: en avant du grip`,
  up: (part) => `${part}\u00a0: au-dessus du grip`,
  side: (part) => `${part}\u00a0: à droite`,
  noseDown: (part) => `${part}\u00a0: moment de piqué`,
}
