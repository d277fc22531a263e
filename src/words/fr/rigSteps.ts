import type { rigSteps as english } from "../rigSteps"

export const rigSteps: typeof english = {
  mounts: { front: "Avant", upper: "Haut", lower: "Bas", back: "Arrière" },
  sides: {
    left: "Côté gauche",
    right: "Côté droit",
    both: "Des deux côtés",
  },
  sidesOf: {
    left: (mount) => `${mount}, côté gauche`,
    right: (mount) => `${mount}, côté droit`,
    both: (mount) => `${mount}, des deux côtés`,
  },
  line: (where, ...steps) => `${where}\u00a0: ${steps.join("\u00a0; ")}`,

  extender: {
    put: (number, piece) => `monter une extension${number}\u00a0: ${piece}`,
    swap: (number, piece) => `changer l’extension${number} pour ${piece}`,
    off: (number) => `retirer l’extension${number}`,
  },
  vbar: {
    put: (number, piece) => `monter un V-bar${number}\u00a0: ${piece}`,
    swap: (number, piece) => `changer le V-bar${number} pour ${piece}`,
    off: (number) => `retirer le V-bar${number}`,
  },
  rod: {
    put: (number, piece) => `monter un stabilisateur${number}\u00a0: ${piece}`,
    swap: (number, piece) => `changer le stabilisateur${number} pour ${piece}`,
    off: (number) => `retirer le stabilisateur${number}`,
  },
  damper: {
    put: (number, piece) => `monter un amortisseur${number}\u00a0: ${piece}`,
    swap: (number, piece) => `changer l’amortisseur${number} pour ${piece}`,
    off: (number) => `retirer l’amortisseur${number}`,
  },
  swing: {
    put: (number, piece) => `monter une masse oscillante${number}\u00a0: ${piece}`,
    swap: (number, piece) => `changer la masse oscillante${number} pour ${piece}`,
    off: (number) => `retirer la masse oscillante${number}`,
  },
  named: (name, length) => `«\u00a0${name}\u00a0», ${length}`,
  stem: (length) => `tige de ${length}`,

  more: (count, mass) => `+${count} ${count === 1 ? "disque" : "disques"} de ${mass}`,
  fewer: (count, mass) => `\u2212${count} ${count === 1 ? "disque" : "disques"} de ${mass}`,

  armOff: "retirer le bras",
  armSet: (splay, droop) => `régler à ${splay} d’écartement et ${droop} vers le bas`,
  wider: (by, splay) => `écarter de ${by}, à ${splay} d’écartement`,
  closer: (by, splay) => `refermer de ${by}, à ${splay} d’écartement`,
  lower: (by, droop) => `abaisser de ${by}, à ${droop} vers le bas`,
  higher: (by, droop) => `relever de ${by}, à ${droop} vers le bas`,
}
