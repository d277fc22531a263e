import { ACCURACY, limitWords, missText, outcomeText, RECHECK, rigText, scoreWords } from "../../describe/findText"
import type { UnitChoice } from "../../describe/format"
import { table } from "../../describe/reportTable"
import { rigChanges, rigChangeText } from "../../describe/rigChanges"
import type { Asked, Outcome } from "../../scene/find"

/** Files' own units: the report converts nothing. */
export const FILE_UNITS: UnitChoice = { massUnit: "g", lengthUnit: "mm", forceUnit: "N" }

type Searched = Extract<Outcome, { kind: "searched" }>

/** What a person reads: the list, what the first setups are made of, and what to do to get the best one. */
export function findText({ scene, kit, question }: Asked, outcome: Searched): string {
  const { setups, misses } = outcome
  const lines = [`${scene.name}, from the kit “${kit.name}”: ${scoreWords[question.score]}`, outcomeText(outcome), ""]
  if (setups.length === 0)
    return `${[...lines, ...misses.map((miss) => `  ${missText(miss, FILE_UNITS)}`)].join("\n")}\n`
  const headings = [
    "",
    "mass g",
    "forward mm",
    "up mm",
    "right mm",
    "net lift N·m",
    "pitch",
    "yaw",
    "roll kg·m²",
    "off middle",
  ]
  const rows = setups.map((setup, index) => [
    String(index + 1),
    setup.massG.toFixed(1),
    ...setup.centreMm.map((value) => value.toFixed(1)),
    setup.netLiftNm.toFixed(3),
    ...[setup.pitch, setup.yaw, setup.roll].map((value) => value.toFixed(4)),
    setup.distance.toFixed(3),
  ])
  const made = setups.map(
    ({ rig }, index) => `  ${String(index + 1).padStart(String(setups.length).length)}  ${rigText(rig, FILE_UNITS)}`,
  )
  const changes = rigChanges(scene, setups[0]!.rig, FILE_UNITS).map((change) => `  ${rigChangeText(change)}`)
  return `${[
    ...[...lines, ...table(headings, rows), "", "What they are made of", ...made, ""],
    ...[
      "To get the first from the rig as it is",
      ...(changes.length > 0 ? [...changes, "", RECHECK] : ["  nothing: it is that rig"]),
    ],
    ...["", ACCURACY],
  ].join("\n")}\n`
}

/** The same as one object. */
export function findJson({ scene, question }: Asked, outcome: Searched): string {
  const { combinations, covered, proved, trouble, setups, misses } = outcome
  const value = {
    question,
    ...{ combinations, covered, proved, ...(trouble === null ? {} : { trouble }) },
    setups: setups.map((setup) => ({
      ...setup,
      changes: rigChanges(scene, setup.rig, FILE_UNITS).map(rigChangeText),
    })),
    misses: misses.map((miss) => ({ ...miss, words: missText(miss, FILE_UNITS), limit: limitWords[miss.key].name })),
  }
  return `${JSON.stringify(value, null, 2)}\n`
}
