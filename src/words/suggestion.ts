import { spoken } from "./language"

/** What would bring a missed target back: what to do at the bench, and what comes of it. */
export const suggestion = spoken("suggestion", {
  /** Figures with a target, in the middle of a sentence. */
  targets: {
    forward: "balance point forward",
    up: "balance point up",
    side: "balance point to the right",
    mass: "mass",
    net: "net lift at full draw",
  },
  /** What a change touches. `each` and `both` are of a pair of arms; `one` of them, whichever side. */
  rod: {
    front: "the front rod",
    upper: "the upper rod",
    lower: "the lower rod",
    back: "the back rod",
    left: (where: string) => `the ${where}left side rod`,
    right: (where: string) => `the ${where}right side rod`,
    each: (where: string) => `each ${where}side rod`,
    both: (where: string) => `both ${where}side rods`,
    one: (where: string) => `${where}side rod`,
  },
  extender: {
    front: "the front extender",
    upper: "the upper extender",
    lower: "the lower extender",
    back: "the back extender",
    left: (where: string) => `the ${where}left side extender`,
    right: (where: string) => `the ${where}right side extender`,
    each: (where: string) => `each ${where}side extender`,
    both: (where: string) => `both ${where}side extenders`,
    one: (where: string) => `${where}side extender`,
  },
  /** An arm without a rod, or a mount without one, with what hangs there. */
  bare: {
    front: "the front mount",
    upper: "the upper mount",
    lower: "the lower mount",
    back: "the back mount",
    left: (where: string) => `the ${where}left arm`,
    right: (where: string) => `the ${where}right arm`,
    each: (where: string) => `each ${where}arm`,
    both: (where: string) => `both ${where}arms`,
    one: (where: string) => `${where}arm`,
  },
  /** The `where` of an arm: on another mount than the front one, on a second V-bar, or both; "" where it is plain. */
  on: {
    upper: "upper ",
    lower: "lower ",
    back: "back ",
  },
  onVbar: {
    front: (number: string) => `V-bar ${number} `,
    upper: (number: string) => `upper V-bar ${number} `,
    lower: (number: string) => `lower V-bar ${number} `,
    back: (number: string) => `back V-bar ${number} `,
  },
  /** The second rod or extender of a chain, and one of several stacks on it. */
  numbered: (thing: string, number: string) => `${thing} ${number}`,
  stack: (thing: string, number: number) => `${thing} (stack ${number})`,

  discs: (count: number) => (count === 1 ? "1 disc" : `${count} discs`),
  /** Changes: buttons say "Try: …", the history lists them. `thing` is one of the above. */
  onto: (discs: string, thing: string) => `${discs} onto ${thing}`,
  off: (discs: string, thing: string) => `${discs} off ${thing}`,
  leftToRight: (discs: string, one: string) => `${discs} from the left ${one} to the right`,
  rightToLeft: (discs: string, one: string) => `${discs} from the right ${one} to the left`,
  spread: (thing: string, angle: string) => `Spread ${thing} ${angle} wider`,
  fold: (thing: string, angle: string) => `Fold ${thing} ${angle} closer`,
  droop: (thing: string, angle: string) => `Droop ${thing} ${angle}`,
  lift: (thing: string, angle: string) => `Lift ${thing} ${angle}`,
  /** `lengths` is "710.0 → 650.0 mm". */
  longer: (thing: string, lengths: string) => `Swap ${thing} for longer, ${lengths}`,
  shorter: (thing: string, lengths: string) => `Swap ${thing} for shorter, ${lengths}`,
  addExtender: (length: string, mass: string, thing: string) =>
    `Put an extender of ${length}, ${mass}, behind ${thing}`,
  removeExtender: (thing: string) => `Take ${thing} out`,
  addStack: (discs: string, thing: string) => `${discs} as a new stack onto ${thing}`,
  removeStack: (thing: string) => `Take the stack off ${thing}`,

  /** A change and what it does: `effect` is "63.0 → 48.1 mm", and what it would cost. */
  whole: (change: string, target: string, effect: string) => `${change}: ${target} ${effect}`,
  costs: (effect: string, targets: string) => `${effect}; would put ${targets} off target`,
  /** The last two of a list; `first` may be several, set apart by commas. */
  and: (first: string, last: string) => `${first} and ${last}`,

  over: (target: string, by: string) => `${target} ${by} over its target`,
  under: (target: string, by: string) => `${target} ${by} under its target`,
  /** Beside the words "Off target". */
  noWay: "no single change mends it",
  ways: (count: number) => (count === 1 ? "1 change would mend it" : `${count} changes would mend it`),
  /** In place of the list of changes. */
  none: "No single change of discs, arms, lengths or extenders brings it inside.",
})
