import type { Scene } from "../scene/schema"
import type { NumberChange, PartChange, RigChange, Suggestion, TargetKey, TargetState } from "../scene/suggest"
import { AS_ASSUMED } from "./balanceText"
import { said, type Shown, show, type UnitChoice } from "./format"
import type { ReadoutKey } from "./readouts"
import { placeWords } from "./suggestionPlaces"

/** What a target's figure is called in a sentence, and what it measures. */
export const targetWords: Readonly<Record<TargetKey, { readonly name: string; readonly quantity: Shown }>> = {
  forwardMm: { name: "balance point forward", quantity: "length" },
  upMm: { name: "balance point up", quantity: "length" },
  sideMm: { name: "balance point to the right", quantity: "length" },
  massMaxG: { name: "mass", quantity: "mass" },
  netLiftNm: { name: "net lift at full draw", quantity: "moment" },
}

/**
 * "2 discs off the front rod: balance point forward 63.0 → 48.1 mm", and which met targets it would miss. `scene` is
 * the one the suggestion was made for.
 */
export const suggestionText = (scene: Scene, suggestion: Suggestion, choice: UnitChoice): string =>
  `${changeText(scene, suggestion, choice)}: ${targetWords[suggestion.target].name} ${effectText(suggestion, choice)}`

/** What comes of it, under the words that name the target: "63.0 → 48.1 mm", and which met targets it would miss. */
export function effectText(suggestion: Suggestion, choice: UnitChoice): string {
  const { before, after } = suggestion.predicted
  const { text, unit } = apart(before, after, targetWords[suggestion.target].quantity, choice)
  const broken = suggestion.breaks.map((key) => targetWords[key].name)
  const warning = broken.length === 0 ? "" : `; would put ${listed(broken)} off target`
  return `${text} ${unit}${warning}`
}

/** What to do at the bench: "1 disc onto each side rod", "Spread both side rods 6° wider". */
export const changeText = (scene: Scene, change: RigChange, choice: UnitChoice): string =>
  "edits" in change ? partText(scene, change, choice) : numberText(scene, change, choice)

function numberText(scene: Scene, { kind, changes, from }: NumberChange, choice: UnitChoice): string {
  const pair = changes.length > 1
  const place = placeWords(scene, changes[0]?.key ?? "", pair)
  const [before, after] = [from[0] ?? 0, changes[0]?.value ?? 0]
  const size = Math.abs(after - before)
  const turn = said(size, "angle", choice)
  switch (kind) {
    case "discs":
      return `${discs(size)} ${after > before ? "onto" : "off"} ${pair ? `each ${place.one}` : place.all}`
    case "shiftDiscs": {
      const [giver, taker] = after < before ? ["left", "right"] : ["right", "left"]
      return `${discs(size)} from the ${giver} ${place.one} to the ${taker}`
    }
    case "splay":
      return after > before ? `Spread ${place.all} ${turn} wider` : `Fold ${place.all} ${turn} closer`
    case "droop":
      return `${after > before ? "Droop" : "Lift"} ${place.all} ${turn}`
    case "length": {
      const { text, unit } = apart(before, after, "length", choice)
      return `Swap ${place.all} for ${after > before ? "longer" : "shorter"}, ${text} ${unit}`
    }
  }
}

/** "Put an extender of 75.0 mm, 41 g, behind both side rods", "3 discs as a new stack onto the front rod". */
function partText(scene: Scene, { kind, edits }: PartChange, choice: UnitChoice): string {
  const [first] = edits
  if (first === undefined) return ""
  const pair = edits.length > 1
  const part = first.put
  const at = { addExtender: "", removeExtender: "extender", addStack: "weights", removeStack: "weights" }[kind]
  const place = placeWords(scene, `${first.path}/${at}:`, pair)
  const each = pair ? `each ${place.one}` : place.all
  switch (kind) {
    case "addExtender": {
      const size = part?.part === "extender" ? part : { lengthMm: 0, massG: 0 }
      return `Put an extender of ${said(size.lengthMm, "length", choice)}, ${said(size.massG, "mass", choice)}, behind ${each}`
    }
    case "removeExtender":
      return `Take ${place.all} out`
    case "addStack":
      return `${discs(part?.part === "weights" ? part.count : 0)} as a new stack onto ${each}`
    case "removeStack":
      return `Take the stack off ${each}`
  }
}

/**
 * "Mass 120 g over its target". Inside its target: nothing to say, an empty text. `spread` is the ± of a measured bow's
 * figure: where no reading determines it, the miss holds only as assumed.
 */
export function missText({ key, missedBy }: TargetState, choice: UnitChoice, spread?: number): string {
  if (missedBy === 0) return ""
  const { name, quantity } = targetWords[key]
  const sentence = `${name} ${said(Math.abs(missedBy), quantity, choice)} ${missedBy > 0 ? "over" : "under"} its target${spread === Number.POSITIVE_INFINITY ? `, ${AS_ASSUMED}` : ""}`
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}

/** The live number each target speaks of, by the report's key. */
export const targetReadout: Readonly<Record<TargetKey, ReadoutKey>> = {
  forwardMm: "centreMm.forward",
  upMm: "centreMm.up",
  sideMm: "centreMm.side",
  netLiftNm: "fullDraw.netLiftNm",
  massMaxG: "massG",
}

/** Beside the words "Off target": how many changes would mend it. */
export function waysText(count: number): string {
  if (count === 0) return "no single change mends it"
  return count === 1 ? "1 change would mend it" : `${count} changes would mend it`
}

/** For a missed target without suggestions. */
export const noSuggestionText = "No single change of discs, arms, lengths or extenders brings it inside."

/** "63.0 → 48.1" and their unit, with as many more digits as it takes to tell the two apart. */
function apart(before: number, after: number, quantity: Shown, choice: UnitChoice): { text: string; unit: string } {
  let digits = 0
  const texts = () => [before, after].map((value) => show(value, quantity, choice, digits).text)
  while (digits < MORE_DIGITS && new Set(texts()).size < 2) digits++
  return { text: texts().join(" → "), unit: show(before, quantity, choice).unit }
}

/** Beyond this two numbers count as the same to anyone who reads them. */
const MORE_DIGITS = 4

const discs = (count: number): string => (count === 1 ? "1 disc" : `${count} discs`)

const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`
