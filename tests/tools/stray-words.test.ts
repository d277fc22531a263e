// biome-ignore-all lint/suspicious/noTemplateCurlyInString: these strings are sources.
import { expect, test } from "vitest"
import { strayWords } from "./stray-words"

const found = (text: string, file = "src/panels/Some.tsx") => strayWords(file, text).map((each) => each.text)

test("words between tags and in what is read aloud are found, what only the browser reads is not", () => {
  expect(found("export const a = <p>level</p>")).toEqual(["level"])
  expect(found('export const a = <button aria-label="Close it" type="button" className="one two" />')).toEqual([
    "Close it",
  ])
  expect(found('export const a = <Field label="Rod length" className="wide one" />')).toEqual(["Rod length"])
})

test("sentences, capitalised words and words beside a gap are found wherever they stand", () => {
  expect(found('const a = { label: "Undo" }')).toEqual(["Undo"])
  expect(found('const a = "no target set"')).toEqual(["no target set"])
  expect(found("const a = `${x} up`")).toEqual(["up"])
  expect(found("const a = `${x}${y} too far`")).toEqual(["too far"])
})

test("keys, paths, types, imports and faults of the program are no words", () => {
  const code = [
    'import { thing } from "../some thing/Else"',
    'type Kind = "Rod" | "two words"',
    'const key = event.key === "ArrowUp" ? "front/rod:lengthMm" : "nearest"',
    "const path = `M${x} ${y}h5`",
    'throw new RangeError("a rod has no length")',
  ]
  expect(found(code.join("\n"), "src/picture/some.ts")).toEqual([])
})

test("the catalogue and the command line are where words are at home", () => {
  for (const file of ["src/words/bar.ts", "src/words/fr/bar.ts", "src/report/main.ts", "src/describe/reportText.ts"]) {
    expect(found('const a = "Rod length"', file)).toEqual([])
  }
  expect(found('const a = "Rod length"', "src/describe/reported.ts")).toEqual(["Rod length"])
})

test("a place is named with its line", () => {
  expect(strayWords("src/app/a.ts", 'const a = 1\n\nconst b = "Rod length"')).toEqual([
    { file: "src/app/a.ts", line: 3, text: "Rod length" },
  ])
})
