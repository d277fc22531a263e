import type { lessons as english } from "../lessons"

export const lessons: typeof english = {
  title: "Leçons",
  choose: "Chacune prend quelques minutes\u00a0: regarder, prédire, essayer. L’arc sur l’établi reste comme il est.",
  present: "Montrer l’arc de l’établi",
  presentAbout: "Une idée à la fois, en grand écran\u00a0; face au réglage gardé, s’il y en a un.",
  own: "Une leçon que l’on écrit soi-même est un fichier\u00a0: le déposer sur la page, ou l’ouvrir comme un réglage.",
  listAway: "La liste n’a pas pu être chargée. Le réseau est-il là\u00a0?",
  loading: "Chargement…",
  picture: "L’arc de cette leçon",
  step: (at, of) => `Étape ${at} sur ${of}`,
  leave: "Quitter la leçon",
  toBench: "Retour à l’établi",
  all: "Toutes les leçons",
  back: "Précédent",
  next: "Suivant",
  reveal: "Montrer la réponse",
  big: "Grand écran",
  usualSize: "Taille normale",
  yours: "votre réponse",
  borneOut: "ce que disent les chiffres",
  asForetold: "C’est bien cela.",
  notSo: "Eh non.",
  done: "Réussi.",
  keys: "Page suivante ou → avance, page précédente ou ← revient, tout comme une télécommande de présentation. Échap quitte.",
  bothArms: (title) => `${title} (des deux côtés)`,
  less: (title) => `Moins\u00a0: ${title}`,
  more: (title) => `Plus\u00a0: ${title}`,
  span: (from, to) => `${from} à ${to}`,
  ideas: {
    balance: {
      heading: "Où il s’équilibre",
      say: "Sur un doigt, il reposerait {now centreMm.forward} en avant du grip. Une hauteur précédée d’un moins est sous le grip.",
    },
    hand: {
      heading: "Ce que tient la main",
      say: "Tout le poids, {now massG}, et l’avant qui tire vers le bas\u00a0: le poids fois la distance horizontale au grip.",
    },
    drawn: {
      heading: "À pleine allonge",
      say: "La ligne de traction lève l’avant avec {now fullDraw.liftNm}, la stabilisation le fait piquer avec {now fullDraw.noseDownNm}. Voici ce qui reste\u00a0: plus, l’avant monte.",
    },
    turning: {
      heading: "Ce qu’il oppose à la rotation",
      say: "Tangage\u00a0: l’avant monte et descend. Lacet\u00a0: il va de gauche à droite. Roulis\u00a0: l’arc prend du dévers.",
    },
  },
}
