import { expect, test } from "vitest"
import { nudge } from "../../src/words/fr/nudge"

test("in French a moment says each bow, then how it turns", () => {
  const { at, bothBows, bowTurns, bows, motionsWithin, ways } = nudge
  const turned = (bow: string, size: string) => bowTurns(bow, `${motionsWithin.yaw} ${size} ${ways.yaw.plus}`)
  expect(at("16 ms", bothBows(turned(bows.now, "0,043°"), turned(bows.held, "0,051°")))).toBe(
    "16 ms\u00a0: cet arc, lacet 0,043° à gauche\u00a0; gardé, lacet 0,051° à gauche.",
  )
})

test("in French a hold says its stiffness, its damping and what share of critical that is", () => {
  const { sentence, againstBoth, againstRoll, none, ofCritical } = nudge.hold
  expect(sentence(`${againstBoth("231 N·m/rad")}, ${againstRoll(none)}`, ofCritical("1,00 N·m·s/rad", "7 %"))).toBe(
    "Raideur 231 N·m/rad en tangage et en lacet, zéro en roulis\u00a0; amortissement 1,00 N·m·s/rad, 7 % de l’amortissement critique en tangage.",
  )
})
