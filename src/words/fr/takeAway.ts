import type { takeAway as english } from "../takeAway"

export const takeAway: typeof english = {
  title: "Partager ou imprimer",
  close: "Fermer",
  link: "Un lien qui contient le réglage",
  linkNote:
    "Tout le réglage est dans le lien lui-même et rien n’est envoyé nulle part\u00a0: qui a le lien a le réglage.",
  onlyHere: "Il mène à l’établi de cet ordinateur, que seul cet ordinateur peut ouvrir.",
  everything: "Avec les notes, les relevés et le journal",
  copy: "Copier le lien",
  copied: "Le lien est copié.",
  notCopied: "Ce navigateur ne laisse pas la page copier. Le lien est sélectionné\u00a0: le copier au clavier.",
  send: "L’envoyer…",
  code: "Le lien sous forme de code pour l’appareil photo d’un téléphone",
  noCode: "Avec tant de choses dedans, le lien est trop long pour un code.",
  card: "Une fiche de réglage",
  cardNote:
    "Une page avec le dessin, le réglage de chaque pièce et l’endroit où elle se visse, les chiffres et ce code.",
  showCard: "Fiche de réglage…",
  files: "Fichiers",
  png: "Image (PNG)",
  csv: "Chiffres (CSV)",
  glb: "Volumes (GLB)",
  filesNote:
    "L’image telle qu’elle est affichée, les chiffres pour un tableur, l’arc pour les logiciels 3D. Tout est fait sur cet appareil.",
  made: (file) => `${file} est prêt.`,
  notMade: (reason) => `Cela n’a pas abouti\u00a0: ${reason}.`,
  noStage: "il n’y a pas d’image sur la page",
  noDrawing: "il n’y a pas de dessin sur la page",
  noPen: "ce navigateur ne sait pas dessiner",
  noPicture: "le navigateur n’a pas produit d’image",
  noBytes: "l’export a donné du texte au lieu d’octets",
  balance: "Point d’équilibre",
  open: "Ouvrir un lien reçu",
  openNote: "Le coller ici, ou dans la barre d’adresse.",
  openLink: "Ouvrir",
  compareLink: "Comparer avec lui",
}
