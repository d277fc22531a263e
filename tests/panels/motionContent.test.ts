import { expect, test } from "vitest"
import { angleContent, momentContent, motionPlots } from "../../src/panels/hills/motionContent"
import { beginRun } from "../../src/panels/hills/motionRun"
import { swingMotions } from "../../src/scene/hills"
import { sceneOf } from "../picture/pictures"
import { arm, rigged, rod, swing, vbar } from "../scene/documents"

const modelsOf = (rig: Parameters<typeof rigged>[0]) => swingMotions(sceneOf(rigged(rig))).map(({ model }) => model!)
const side = () => arm(40, 10, [rod({ lengthMm: 230 }), swing()])
const three = modelsOf({ front: [vbar({ left: side(), right: side() })], lower: [swing({ stemLengthMm: 70 })] })
const run = beginRun(three, 0, { toDeg: 25, degreesASecond: 60 })
const plots = motionPlots(run, 1)
const names = (content: { lines: readonly { name: string }[] }) => content.lines.map(({ name }) => name)

test("weights that swing alike share a line that names them all", () => {
  expect(names(angleContent(plots, 9))).toEqual(["1 + 2", "3", "locked", "bow"])
})

test("the moments of all together stand before those of each", () => {
  const content = momentContent(plots, 9)
  expect(names(content)).toEqual(["all free", "all locked", "1", "2", "3"])
  const [all, , ...each] = content.lines
  expect(all!.values[8]).toBeCloseTo(
    each.reduce((sum, { values }) => sum + values[8]!, 0),
    12,
  )
  expect(all!.values[9]).toBeNull()
})

test("one weight alone is called the weight, and has no lines of its own beside the sum", () => {
  const alone = motionPlots(beginRun([three[2]!], 0, { toDeg: 25, degreesASecond: 60 }), 1)
  expect(names(angleContent(alone, 5))).toEqual(["weight", "locked", "bow"])
  expect(names(momentContent(alone, 5))).toEqual(["free", "locked"])
})

test("no curve leaves its axis", () => {
  for (const [content, [low, high]] of [
    [angleContent(plots, plots.seconds.length), plots.angleSpan],
    [momentContent(plots, plots.seconds.length), plots.momentSpan],
  ] as const) {
    for (const value of content.lines.flatMap(({ values }) => values)) {
      expect(value).toBeGreaterThanOrEqual(low)
      expect(value).toBeLessThanOrEqual(high)
    }
  }
})
