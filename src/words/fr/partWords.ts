import type { partWords as english } from "../partWords"

export const partWords: typeof english = {
  kinds: {
    extender: "extension",
    rod: "stabilisateur",
    damper: "amortisseur",
    weights: "masses",
    vbar: "V-bar",
    swing: "masse oscillante",
  },
  mounts: { front: "avant", upper: "en haut", lower: "en bas", back: "arrière" },
  mountTitles: { front: "Fixation avant", upper: "Fixation haute", lower: "Fixation basse", back: "Fixation arrière" },
  sides: { left: "gauche", right: "droit" },
  arm: (side, mount, vbar) => {
    const which = [mount, vbar].filter((word) => word !== "").join(", ")
    return which === "" ? side : `${side} (${which})`
  },
  armTitle: (arm) => `bras ${arm}`,
  onMount: (mount, kind) => `${kind} ${mount}`,
  onArm: (arm, kind) => `${kind} côté ${arm}`,
  bow: "Arc",
  riser: "Poignée",
  limbs: "Branches",
  string: "Corde",
  arrow: "Flèche",
  archer: "Archer",
  target: "Objectif",
  newBow: "Nouvel arc",
  pose: "Tenue",
}
