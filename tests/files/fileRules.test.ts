import { expect, test } from "vitest"
import { arrivingFileRules } from "../../src/files/fileRules"
import { fullScene } from "../state/benches"

test("until the file's rules have come the rules between numbers hold; then the whole file's do", async () => {
  const contradicting = fullScene()
  contradicting.bow.drawLengthMm = 170
  const misspelt = Object.assign(fullScene(), { colour: "red" })
  const { rules, fetch } = arrivingFileRules()
  const paths = (scene: ReturnType<typeof fullScene>) => rules(scene).map(({ path }) => path)
  expect([paths(fullScene()), paths(contradicting), paths(misspelt)]).toEqual([[], ["bow.drawLengthMm"], []])
  await fetch()
  expect([paths(fullScene()), paths(contradicting), paths(misspelt)]).toEqual([[], ["bow.drawLengthMm"], ["colour"]])
})
