import type { shipped as english } from "../shipped"

export const shipped: typeof english = {
  scenes: {
    "barebow-riser-weights": "Arc nu avec masses sur la poignée",
    "beginner-one-rod": "Premier arc avec un seul stabilisateur",
    "compound-front-and-back-bar": "Arc à poulies, stabilisation avant et arrière",
    "field-recurve-swinging-weights": "Classique de parcours à masses oscillantes",
    "short-hunting-rod": "Stabilisateur court pour la forêt",
    "target-recurve-68-inch": "Classique de cible 68 pouces, corde sur les branches",
    "target-recurve-drooped-bar": "Classique de cible, V-bar incliné vers le bas",
    "target-recurve-measured": "Classique de cible, mesuré à l’établi",
    "target-recurve-straight-bar": "Classique de cible, V-bar horizontal",
  },
  "scenes/kits": {
    "barebow-pouch": "Pochette d’arc nu",
    "target-club-box": "Boîte de cible du club",
  },
}
