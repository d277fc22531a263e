import type { cautions as english } from "../cautions"

export const cautions: typeof english = {
  overloaded: (rod, load, rated) =>
    `${rod} porte ${load}\u00a0g au-delà de lui\u00a0; son fabricant l’admet pour ${rated}\u00a0g.`,
  rods: "Un stabilisateur fêlé ou surchargé peut casser\u00a0: s’en tenir à la masse d’extrémité admise par son fabricant, et l’inspecter avant chaque séance.",
  threads: "Revérifier chaque filetage après un changement. Ne jamais lâcher la corde d’un arc armé sans flèche.",
  pain: "Plus lourd n’est pas plus sûr\u00a0: une douleur à l’épaule ou au coude veut dire arrêter, et consulter un professionnel de santé.",
  coach: "La parole de l’entraîneur et du responsable du tir l’emporte sur tout nombre donné ici.",
}
