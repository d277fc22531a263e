import { spoken } from "./language"

/**
 * Why a recurve's limbs cannot take the shape that is asked for. A gap of type P is a length that is put in words later;
 * `instead` is one of the sentences without a capital.
 */
export const limbFaults = spoken("limbFaults", {
  notFinite: "This length is not a finite number.",
  notPositive: "This number must be above zero.",
  negative: "This number must not be below zero.",
  beyondHalfTurn: "This angle must lie within half a turn.",
  recurvePastTip: "The recurve must begin on the limb, before its tip.",
  braceInFront: <P>(brace: P, instead: readonly (string | P)[]): (string | P)[] => [
    "The brace height cannot be reached: a string ",
    brace,
    " behind the grip would lie in front of the limb's root; ",
    ...instead,
    ".",
  ],
  braceWithoutShape: <P>(brace: P, instead: readonly (string | P)[]): (string | P)[] => [
    "The brace height cannot be reached: this limb has no strung shape with its string ",
    brace,
    " behind the grip; ",
    ...instead,
    ".",
  ],
  noBrace: "no brace height near it works either",
  nearestBrace: <P>(nearest: P): (string | P)[] => ["the nearest that works is ", nearest],
  drawBelowBrace: <P>(draw: P, brace: P): (string | P)[] => [
    "The draw of ",
    draw,
    " is not beyond the brace height of ",
    brace,
    ", where the string rests.",
  ],
  drawPastString: <P>(draw: P, straight: P, instead: readonly (string | P)[]): (string | P)[] => [
    "The draw of ",
    draw,
    " is more than the string allows: limb and string pulled into one straight line reach ",
    straight,
    "; ",
    ...instead,
    ".",
  ],
  givesWay: <P>(draw: P, instead: readonly (string | P)[]): (string | P)[] => [
    "On the way to a draw of ",
    draw,
    " the limb would give way, snapping into another shape or straightening out; ",
    ...instead,
    ".",
  ],
  notFound: <P>(draw: P): (string | P)[] => ["The limb's shape at a draw of ", draw, " could not be found."],
  noDraw: "it cannot be drawn at all",
  mostDraw: <P>(most: P): (string | P)[] => ["it can be drawn to ", most],
})
