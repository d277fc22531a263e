import type { Scene } from "../scene/schema"
import type { NumberChange, PartChange, RigChange, Suggestion, TargetKey, TargetState } from "../scene/suggest"
import { suggestion as words } from "../words/suggestion"
import { AS_ASSUMED } from "./balanceText"
import { said, type Shown, show, type UnitChoice } from "./format"
import type { ReadoutKey } from "./readouts"
import { placeWords } from "./suggestionPlaces"

/** What a target's figure is called in a sentence, and what it measures. */
export const targetWords: Readonly<Record<TargetKey, { readonly name: string; readonly quantity: Shown }>> = {
  forwardMm: { name: words.targets.forward, quantity: "length" },
  upMm: { name: words.targets.up, quantity: "length" },
  sideMm: { name: words.targets.side, quantity: "length" },
  massMaxG: { name: words.targets.mass, quantity: "mass" },
  netLiftNm: { name: words.targets.net, quantity: "moment" },
}

/**
 * "2 discs off the front rod: balance point forward 63.0 → 48.1 mm", and which met targets it would miss. `scene` is
 * the one the suggestion was made for.
 */
export const suggestionText = (scene: Scene, suggestion: Suggestion, choice: UnitChoice): string =>
  words.whole(
    changeText(scene, suggestion, choice),
    targetWords[suggestion.target].name,
    effectText(suggestion, choice),
  )

/** What comes of it, under the words that name the target: "63.0 → 48.1 mm", and which met targets it would miss. */
export function effectText(suggestion: Suggestion, choice: UnitChoice): string {
  const { before, after } = suggestion.predicted
  const { text, unit } = apart(before, after, targetWords[suggestion.target].quantity, choice)
  const broken = suggestion.breaks.map((key) => targetWords[key].name)
  const effect = `${text} ${unit}`
  return broken.length === 0 ? effect : words.costs(effect, listed(broken))
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
      return (after > before ? words.onto : words.off)(words.discs(size), place.each)
    case "shiftDiscs":
      return (after < before ? words.leftToRight : words.rightToLeft)(words.discs(size), place.one)
    case "splay":
      return (after > before ? words.spread : words.fold)(place.all, turn)
    case "droop":
      return (after > before ? words.droop : words.lift)(place.all, turn)
    case "length": {
      const { text, unit } = apart(before, after, "length", choice)
      return (after > before ? words.longer : words.shorter)(place.all, `${text} ${unit}`)
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
  switch (kind) {
    case "addExtender": {
      const size = part?.part === "extender" ? part : { lengthMm: 0, massG: 0 }
      return words.addExtender(said(size.lengthMm, "length", choice), said(size.massG, "mass", choice), place.each)
    }
    case "removeExtender":
      return words.removeExtender(place.all)
    case "addStack":
      return words.addStack(words.discs(part?.part === "weights" ? part.count : 0), place.each)
    case "removeStack":
      return words.removeStack(place.each)
  }
}

/**
 * "Mass 120 g over its target". Inside its target: nothing to say, an empty text. `spread` is the ± of a measured bow's
 * figure: where no reading determines it, the miss holds only as assumed.
 */
export function missText({ key, missedBy }: TargetState, choice: UnitChoice, spread?: number): string {
  if (missedBy === 0) return ""
  const { name, quantity } = targetWords[key]
  const sentence = (missedBy > 0 ? words.over : words.under)(name, said(Math.abs(missedBy), quantity, choice))
  const caution = spread === Number.POSITIVE_INFINITY ? `, ${AS_ASSUMED}` : ""
  return sentence.charAt(0).toUpperCase() + sentence.slice(1) + caution
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
export const waysText = (count: number): string => (count === 0 ? words.noWay : words.ways(count))

/** For a missed target without suggestions. */
export const noSuggestionText = words.none

/** "63.0 → 48.1" and their unit, with as many more digits as it takes to tell the two apart. */
function apart(before: number, after: number, quantity: Shown, choice: UnitChoice): { text: string; unit: string } {
  let digits = 0
  const texts = () => [before, after].map((value) => show(value, quantity, choice, digits).text)
  while (digits < MORE_DIGITS && new Set(texts()).size < 2) digits++
  return { text: texts().join(" → "), unit: show(before, quantity, choice).unit }
}

/** Beyond this two numbers count as the same to anyone who reads them. */
const MORE_DIGITS = 4

const listed = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? "") : words.and(names.slice(0, -1).join(", "), names.at(-1)!)
