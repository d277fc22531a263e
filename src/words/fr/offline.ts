import type { offline as english } from "../offline"

export const offline: typeof english = {
  newer:
    "Une nouvelle version de l’établi est prête. Elle s’ouvrira la prochaine fois, ou tout de suite : le travail reste.",
  openNow: "L’ouvrir maintenant",
}
