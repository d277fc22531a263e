import type { kitFaults as english } from "../kitFaults"

export const kitFaults: typeof english = {
  notAKit: (given) => `${given} ne convient pas\u00a0; une boîte est un seul objet JSON`,
  format: (given, format) => `${given} ne convient pas\u00a0; un fichier de boîte dit «\u00a0${format}\u00a0»`,
  noLess: (given, from) => `${given} ne convient pas\u00a0; il faut au moins ${from}`,
  line: (line) => `ligne ${line}`,
  inLine: (line, column) => `ligne ${line}, ${column}`,
  column: (line, column) => `ligne ${line}, colonne ${column}`,
  noPieceColumn: "la colonne «\u00a0piece\u00a0» manque",
  unknownColumn: (given, columns) => `${given} n’est pas une colonne d’une boîte\u00a0; au choix\u00a0: ${columns}`,
  strayColumn: (owners, piece) =>
    `cette colonne est réservée à ${owners}\u00a0; la laisser vide sur une ligne de ${piece}`,
  and: (others, last) => `${others} et ${last}`,
}
