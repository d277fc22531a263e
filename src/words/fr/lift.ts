import type { lift as english } from "../lift"

export const lift: typeof english = {
  degree: {
    raises: (by) => `Chaque degré vers le haut augmente le moment de levée de ${by}.`,
    lowers: (by) => `Chaque degré vers le haut diminue le moment de levée de ${by}.`,
  },
  millimetre: {
    raises: (by) => `Chaque millimètre vers le haut augmente le moment de levée de ${by}.`,
    lowers: (by) => `Chaque millimètre vers le haut diminue le moment de levée de ${by}.`,
  },
  inch: {
    raises: (by) => `Chaque dixième de pouce vers le haut augmente le moment de levée de ${by}.`,
    lowers: (by) => `Chaque dixième de pouce vers le haut diminue le moment de levée de ${by}.`,
  },
  changed: (by) => `levée ${by}`,
  unchanged: "levée inchangée",
}
