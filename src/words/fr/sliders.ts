import type { sliders as english } from "../sliders"

export const sliders: typeof english = {
  label: "Curseurs",
  hint: "Glisser pour essayer, ou taper dans une case ; Échap abandonne. Les feuilles Montage et Arc ont d’autres nombres.",
  pose: "Comment l’arc est tenu",
  bow: "L’arc et l’archer",
  stemLength: "Longueur de tige oscillante",
  bobMass: "Masse de la masselotte",
  elbow: "Coude de corde levé",
  ofPart: (part, number) => `${part}, ${number}`,
}
