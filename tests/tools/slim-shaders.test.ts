import { readFileSync } from "node:fs"
import { createRequire } from "node:module"
import { dirname, join } from "node:path"
import { describe, expect, test } from "vitest"
import { slimShader, slimShaders } from "./slim-shaders"

const three = readFileSync(join(dirname(createRequire(import.meta.url).resolve("three")), "three.module.js"), "utf8")

describe("a shader", () => {
  test("loses what stands behind a switch that is never set, and keeps the other branch", () => {
    expect(slimShader("a;\n#ifdef USE_FOG\n  b;\n#else\n  c;\n#endif\nd;")).toBe("a;\nc;\nd;")
    expect(slimShader("#ifndef USE_FOG\n  a;\n#else\n  b;\n#endif")).toBe("a;")
    expect(slimShader("#if defined( USE_FOG )\n  a;\n#endif\nb;")).toBe("b;")
  })

  test("keeps every other condition, also within and around what it loses", () => {
    expect(slimShader("#ifdef USE_MAP\n#ifdef USE_FOG\na;\n#if X > 2\nb;\n#endif\n#endif\nc;\n#else\nd;\n#endif")).toBe(
      "#ifdef USE_MAP\nc;\n#else\nd;\n#endif",
    )
    expect(slimShader("#if defined( USE_FOG ) || defined( USE_MAP )\na;\n#endif")).toBe(
      "#if defined( USE_FOG ) || defined( USE_MAP )\na;\n#endif",
    )
  })

  test("loses its comments and indentation", () => {
    expect(slimShader("\tvec3 a; // where it is\n/* and\n why */\n\n  a = b;")).toBe("vec3 a;\na = b;")
  })

  test("is refused where a condition is left open, or goes on after a switch that is never set", () => {
    expect(() => slimShader("#ifdef USE_MAP\na;")).toThrow("not closed")
    expect(() => slimShader("#ifdef USE_FOG\na;\n#elif X\nb;\n#endif")).toThrow("second condition")
  })
})

test("three's own shaders all come through, a third smaller or more, those of the page's materials with their code", () => {
  const slim = slimShaders(three)
  const shaders = (text: string) => text.slice(0, text.indexOf("const ShaderChunk = {"))
  expect(shaders(slim).length).toBeLessThan(shaders(three).length * 0.67)
  for (const name of ["lights_physical_pars_fragment", "begin_vertex", "colorspace_fragment"]) {
    expect(slim).toMatch(new RegExp(`var ${name} = ".{20,}"`))
  }
  expect(slim).not.toContain("USE_SHADOWMAP\\n")
})

test("a three that lists its shaders otherwise is refused, so that nothing grows or breaks unseen", () => {
  expect(() => slimShaders("const Chunks = {}")).toThrow("ShaderChunk")
  expect(() => slimShaders("\nconst ShaderChunk = {\n\tbegin_vertex: begin_vertex,\n};")).toThrow("background_vert")
})
