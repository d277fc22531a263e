import { spoken } from "./language"

/** What the dialog for sharing and printing says. */
export const takeAway = spoken("takeAway", {
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
  card: "A setup card",
  cardNote: "One page with the drawing, every part's setting and where it screws in, the figures, and this code.",
  showCard: "Setup card…",
  files: "Files",
  png: "Picture (PNG)",
  csv: "Numbers (CSV)",
  glb: "Solids (GLB)",
  filesNote:
    "The picture as you see it, the numbers for a spreadsheet, the bow for 3D programs. All made on this device.",
  made: (file: string) => `${file} is made.`,
  /** The reason is one of those below, or the browser's own words. */
  notMade: (reason: string) => `That was not made: ${reason}.`,
  noStage: "there is no picture on the page",
  noDrawing: "there is no drawing on the page",
  noPen: "this browser cannot draw",
  noPicture: "the browser made no picture",
  noBytes: "the exporter made text where bytes were asked for",
  /** Name of a ball among the solids. */
  balance: "Balance point",
  open: "Open a link somebody gave you",
  openNote: "Paste it here, or in the address bar.",
  /** What is wrong with the link: one thing, or several. */
  wrong: (...all: readonly string[]) => `${all.join("; ")}.`,
  openLink: "Open",
  compareLink: "Compare with it",
})
