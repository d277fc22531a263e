/** What the dialog for sharing and printing says. */
export const words = {
  title: "Share or print",
  close: "Close",
  link: "A link that holds the setup",
  linkNote: "The whole setup is in the link itself and nothing is sent anywhere: whoever has the link has the setup.",
  onlyHere: "It leads to the bench on this computer, so only this computer can open it.",
  everything: "With notes, readings and the log",
  copy: "Copy the link",
  copied: "The link is copied.",
  notCopied: "This browser does not let the page copy. The link is marked: copy it with the keyboard.",
  send: "Send it…",
  code: "The link as a code for a phone's camera",
  noCode: "With so much in it the link is too long for a code.",
  codeNote: "A phone's camera opens this.",
  card: "A setup card",
  cardNote: "One page with the drawing, every part's setting and where it screws in, the figures, and this code.",
  showCard: "Setup card…",
  files: "Files",
  png: "Picture (PNG)",
  csv: "Numbers (CSV)",
  glb: "Solids (GLB)",
  filesNote:
    "The picture as you see it, the numbers for a spreadsheet, the bow for 3D programs. All made on this device.",
  made: (name: string) => `${name} is made.`,
  notMade: (reason: string) => `That was not made: ${reason}.`,
  open: "Open a link somebody gave you",
  openNote: "Paste it here, or in the address bar.",
  openLink: "Open",
  compareLink: "Compare with it",
} as const

/** Under the picture: what it shows. */
export const pictureCaption = (name: string): string =>
  name === "" ? "Bow Balance Bench" : `${name} · Bow Balance Bench`
