import { spoken } from "./language"

/** What the handles in the picture say: to a screen reader, in their tips and once they are let go. */
export const handle = spoken("handle", {
  discs: (count: number) => (count === 1 ? "1 disc" : `${count} discs`),
  /** What the bow does at a handle's value. */
  lift: (moment: string) => `lift ${moment} at full draw`,
  balance: (ahead: string) => `balance point ${ahead}`,
  standing: (value: string, effect: string) => `${value}; ${effect}`,
  /** Said after a change; `label` names the number, `effect` is what the bow does, with a capital. */
  changed: (label: string, value: string, effect: string) => `${label} ${value}. ${effect}.`,
  bothArms: (value: string) => `${value}, both arms`,
  fingers: (force: string) => `${force} on the fingers`,
  most: (value: string) => `No more than ${value}`,
  least: (value: string) => `No less than ${value}`,
  /** Switches at the root of a chain; `where` is "front" or "left arm". */
  addExtender: (where: string) => `Add an extender, ${where}`,
  removeExtender: (where: string) => `Remove the extender, ${where}`,
})
