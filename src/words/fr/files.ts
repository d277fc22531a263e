import type { files as english } from "../files"

export const files: typeof english = {
  saveAs: { title: "Enregistrer sous", name: "Nom du fichier", save: "Enregistrer", cancel: "Annuler" },
  examples: "Des arcs inventés pour commencer. Annuler suffit pour retrouver ce qui est sur l’établi.",
  listAway: "La liste n’a pas pu être chargée. Le réseau est-il là ?",
  opened: (name) => `Ouvert : ${name}`,
  savedAs: (file) => `Enregistré sous ${file}`,
  notOpened: (name) => `« ${name} » n’a pas été ouvert.`,
  unread: (file) => `« ${file} » n’a pas pu être lu.`,
  toOpen: {
    tooBig: (file, megabytes) =>
      `« ${file} » n’a pas été ouvert : il fait ${megabytes} Mo, un fichier de réglage est bien en dessous de 2 Mo.`,
    readerAway: (file) =>
      `« ${file} » n’a pas été ouvert : la partie de la page qui lit les fichiers n’a pas pu être chargée. Le réseau est-il là ?`,
    wrong: (file) => `« ${file} » n’a pas été ouvert ; l’établi est resté tel quel.`,
  },
  toCompare: {
    tooBig: (file, megabytes) =>
      `« ${file} » n’a pas été comparé : il fait ${megabytes} Mo, un fichier de réglage est bien en dessous de 2 Mo.`,
    readerAway: (file) =>
      `« ${file} » n’a pas été comparé : la partie de la page qui lit les fichiers n’a pas pu être chargée. Le réseau est-il là ?`,
    wrong: (file) => `« ${file} » n’a pas été comparé ; l’établi est resté tel quel.`,
  },
  lessonNotOpened: (lesson) => `La leçon « ${lesson} » n’a pas été ouverte ; l’établi est resté tel quel.`,
  scene: {
    noName: (id) => `« ${id} » n’est pas le nom d’un réglage fourni avec l’établi`,
    unknown: (id) => `le réglage « ${id} » n’est pas fourni avec l’établi`,
    away: (id) => `le réglage « ${id} » n’a pas pu être chargé ; le réseau est-il là ?`,
  },
  lesson: {
    noName: (id) => `« ${id} » n’est pas le nom d’une leçon fournie avec l’établi`,
    unknown: (id) => `la leçon « ${id} » n’est pas fournie avec l’établi`,
    away: (id) => `la leçon « ${id} » n’a pas pu être chargée ; le réseau est-il là ?`,
  },
  linkReaderAway: "la partie de la page qui lit les liens n’a pas pu être chargée ; le réseau est-il là ?",
  linkNotOpened:
    "Le réglage du lien n’a pas été ouvert : la partie de la page qui lit les liens n’a pas pu être chargée. Le réseau est-il là ?",
  unnamed: "arc",
}
