import type { handedness as english } from "../handedness"

export const handedness: typeof english = {
  shoots: "L’archer tire",
  right: "en droitier",
  left: "en gaucher",
  mirrors:
    "Seul le dessin de la poignée est retourné. Les nombres saisis (viseur, fixations, latéraux) restent tels quels.",
}
