import type { page as english } from "../page"

export const page: typeof english = {
  bow: "L’arc",
  held: "La tenue de l’arc",
  sheet: "Chiffres et pièces",
  tabList: "Feuille",
  tabs: {
    Balance: "Équilibre",
    Rig: "Montage",
    Bow: "Arc",
    Sliders: "Curseurs",
    Draw: "Allonge",
    Hills: "Pentes",
    Find: "Chercher",
    Measure: "Mesurer",
    Nudge: "Impulsion",
  },
  loading: "Chargement…",
  drop: "Déposer le fichier du réglage pour l’ouvrir",
  lookFrom: "Point de vue",
  views: { side: "Côté", top: "Dessus", archer: "Œil d’archer", free: "Libre", flat: "Dessin plat" },
  no3d: (reason) =>
    `Ce navigateur ne sait pas dessiner en 3D (${reason}). Le dessin plat montre le même arc ; tout le reste fonctionne.`,
}
