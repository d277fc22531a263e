import { mkdtempSync, rmSync, writeFileSync } from "node:fs"
import { tmpdir } from "node:os"
import { join } from "node:path"
import { describe, expect, it } from "vitest"
import { findBrowser, type Surroundings } from "./find-browser"

function surroundings(change: Partial<Surroundings> & { present?: string[]; arrives?: Record<string, string> }) {
  const present = new Set(change.present)
  const tried: string[] = []
  const made: Surroundings = {
    env: { PATH: "/usr/bin:/bin" },
    ownPath: "/cache/own/chrome",
    isRoot: true,
    works: (path) => present.has(path),
    install: (_command, args) => {
      const line = args.join(" ")
      tried.push(line)
      for (const [ending, path] of Object.entries(change.arrives ?? {})) if (line.endsWith(ending)) present.add(path)
    },
    ...change,
  }
  return { made, tried }
}

describe("finding a browser for the tests", () => {
  it("takes the one named in CHROMIUM_PATH before any other", () => {
    const { made } = surroundings({
      env: { CHROMIUM_PATH: "/opt/mine", PATH: "/usr/bin" },
      present: ["/opt/mine", "/cache/own/chrome", "/usr/bin/chromium"],
    })
    expect(findBrowser(made)).toBe("/opt/mine")
  })

  it("refuses a CHROMIUM_PATH that does not run instead of taking another browser", () => {
    const { made } = surroundings({
      env: { CHROMIUM_PATH: "/opt/gone", PATH: "/usr/bin" },
      present: ["/usr/bin/chromium"],
    })
    expect(() => findBrowser(made)).toThrow('CHROMIUM_PATH is "/opt/gone"')
  })

  it("prefers Playwright's own to the system's", () => {
    const { made } = surroundings({ present: ["/cache/own/chrome", "/usr/bin/chromium"] })
    expect(findBrowser(made)).toBe("/cache/own/chrome")
  })

  it("finds the system's on the search path and installs nothing", () => {
    const { made, tried } = surroundings({ present: ["/bin/google-chrome"] })
    expect(findBrowser(made)).toBe("/bin/google-chrome")
    expect(tried).toEqual([])
  })

  it("downloads Playwright's when there is none", () => {
    const { made, tried } = surroundings({ arrives: { "install chromium": "/cache/own/chrome" } })
    expect(findBrowser(made)).toBe("/cache/own/chrome")
    expect(tried).toHaveLength(1)
  })

  it("installs the system's with apt, as root only, when downloading fails", () => {
    const programs = mkdtempSync(join(tmpdir(), "planted-"))
    writeFileSync(join(programs, "apt-get"), "")
    const chromium = join(programs, "chromium")
    const change = { env: { PATH: programs }, arrives: { "install -y chromium": chromium } }
    const asRoot = surroundings(change)
    const asAnother = surroundings({ ...change, isRoot: false })
    try {
      expect(findBrowser(asRoot.made)).toBe(chromium)
      expect(() => findBrowser(asAnother.made)).toThrow("none was found")
    } finally {
      rmSync(programs, { recursive: true })
    }
    expect(asRoot.tried.slice(1)).toEqual(["update", "install -y chromium"])
    expect(asAnother.tried).toHaveLength(1)
  })

  it("says what to do when nothing can be found or installed", () => {
    const { made, tried } = surroundings({ isRoot: false })
    expect(() => findBrowser(made)).toThrow("set CHROMIUM_PATH to a Chromium program")
    expect(tried).toHaveLength(1)
  })
})
