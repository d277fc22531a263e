import { spoken } from "./language"

const piecesSaid = (count: number) => (count === 1 ? "1 piece" : `${count} pieces`)

/** The kit of pieces as a file, and the search that uses it up. */
export const kitFiles = spoken("kitFiles", {
  /** The kit of who has none yet. */
  mine: "My box",
  /** A file that was dropped: where it has gone. */
  onFindSheet: (kit: string, pieces: number) =>
    `The kit “${kit}” is in the box on the Find sheet: ${piecesSaid(pieces)}.`,
  /** Said once it is done. */
  inBox: (kit: string, pieces: number) => `The kit “${kit}” is in the box: ${piecesSaid(pieces)}`,
  notOpened: (kit: string) => `The kit “${kit}” was not opened; the box is as it was.`,
  notSaved: (reason: string) => `The kit was not saved: ${reason}`,
  away: (id: string) => `kit "${id}" could not be fetched; is the network there?`,
  /** Why a search broke off. */
  silent: "a worker fell silent",
  searchAway: "the part of the page that searches could not be fetched or broke",
  lost: "a message was lost",
})
