import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { dirname, join } from "node:path"
import { expect, it } from "vitest"
import { featuresOff } from "./browser-features"

it("keeps off in the test browser every feature that the installed Playwright turns off", () => {
  const asked = createRequire(import.meta.url)
  const core = dirname(createRequire(asked.resolve("@playwright/test/package.json")).resolve("playwright-core"))
  const list = /disabledFeatures = \[([^\]]*)\]/.exec(readFileSync(join(core, "lib/coreBundle.js"), "utf8"))
  const names = [...(list?.[1] ?? "").matchAll(/^\s*"(\w+)",?$/gm)].map(([, name]) => name)
  expect(names.length, "names in Playwright's own list").toBeGreaterThan(5)
  expect(featuresOff).toEqual(expect.arrayContaining(names))
})
