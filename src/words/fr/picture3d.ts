import type { picture3d as english } from "../picture3d"

export const picture3d: typeof english = {
  side: "Image 3D de l’arc, vu de la droite de l’archer, cible à droite",
  top: "Image 3D de l’arc, vu de dessus, cible à droite",
  archer: "Image 3D de l’arc, vu de derrière l’archer, face à la cible",
  free: "Image 3D de l’arc, vu de là où vous l’avez tourné",
  keys: "Les flèches du clavier tournent la vue, Maj avec les flèches la déplace, plus et moins zooment, Début montre l’arc entier de côté.",
  noWebgl: "WebGL est désactivé ou absent",
  lost: "la carte graphique ne dessine plus",
  broken: "l’image 3D s’est arrêtée",
  grip: "grip",
  ellipsoid: "ellipsoïde de même masse et de même résistance à la rotation, à moitié de sa taille",
  pitch: "tangage",
  yaw: "lacet",
  roll: "roulis",
  noseDown: (moment) => `${moment} en piqué`,
  noseUp: (moment) => `${moment} vers le haut`,
  share: (percent) => `${percent} de celui de tout l’arc`,
}
