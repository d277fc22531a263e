import { spoken } from "./language"

/** What the numbers of a kit, and of a search among its pieces, are called: labels of fields. */
export const kitNames = spoken("kitNames", {
  pieces: "pieces in the box",
  discs: "discs in the box",
  splayFrom: "splay from",
  splayTo: "splay to",
  splayStep: "splay in steps of",
  droopFrom: "droop from",
  droopTo: "droop to",
  droopStep: "droop in steps of",
  mostDiscs: "discs on one stack at most",
  count: "setups listed",
  reachForward: "rig forward of the grip at most",
  reachSide: "rig to either side at most",
  pitch: "pitch resistance at least",
  yaw: "yaw resistance at least",
  roll: "roll resistance at least",
})
