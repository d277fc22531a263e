import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { afterAll, describe, expect, it } from "vitest"
import { anchors, brokenLinks, links } from "./link-check"

const root = join(import.meta.dirname, "../..")
const planted = mkdtempSync(join(tmpdir(), "planted-"))
afterAll(() => rmSync(planted, { recursive: true }))

function brokenIn(text: string): string[] {
  writeFileSync(join(planted, "README.md"), text)
  writeFileSync(join(planted, "OTHER.md"), "# Five rods\n\n## Five rods\n")
  return brokenLinks(planted, "README.md")
}

describe("the documents", () => {
  for (const document of ["README.md", "DEVELOPERS.md"]) {
    it(`${document} links only to files and headings that exist`, () => {
      expect(brokenLinks(root, document)).toEqual([])
    })
  }
})

describe("the link check", () => {
  it("finds a link to a file that is not there", () => {
    expect(brokenIn("See [this](MISSING.md).")).toEqual(["README.md: MISSING.md leads to no file"])
  })

  it("finds a missing picture, also one written as a tag", () => {
    expect(brokenIn('![a rod](rod.png)\n<img alt="two" src="two.png">')).toHaveLength(2)
  })

  it("finds a link to a heading that is not there, in the same document and in another", () => {
    expect(brokenIn("# Rods\n[a](#weights) [b](OTHER.md#six-rods)")).toEqual([
      "README.md: #weights leads to no heading",
      "README.md: OTHER.md#six-rods leads to no heading",
    ])
  })

  it("accepts links that lead somewhere, repeated headings and addresses on the net", () => {
    expect(
      brokenIn("# Rods\n[a](#rods) [b](OTHER.md#five-rods-1) [c](https://example.org/x#y)\n\n[d]: OTHER.md"),
    ).toEqual([])
  })

  it("leaves code alone", () => {
    expect(links("`[a](b.md)`\n```\n[c](d.md)\n```\n[e](f.md)")).toEqual(["f.md"])
  })

  it("makes anchors of headings as code hosts do", () => {
    expect([...anchors("## What it can't do: 3 `rods` & more\n### See [here](x.md)")]).toEqual([
      "what-it-cant-do-3-rods--more",
      "see-here",
    ])
  })
})
