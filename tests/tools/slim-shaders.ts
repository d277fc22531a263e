/**
 * Shaders as three ships them hold every feature of every material, switched by the preprocessor when a program is made.
 * This does part of the preprocessor's work at build time: what stands behind a switch that this page never sets is not
 * sent to its visitors.
 */

/** Switches that no material, light or fog of this page sets. */
const NEVER_SET: ReadonlySet<string> = new Set([
  "DITHERING",
  "USE_ALPHAHASH",
  "USE_ALPHAMAP",
  "USE_ANISOTROPY",
  "USE_AOMAP",
  "USE_BATCHING",
  "USE_BATCHING_COLOR",
  "USE_BUMPMAP",
  "USE_CLEARCOAT",
  "USE_CLEARCOATMAP",
  "USE_CLEARCOAT_NORMALMAP",
  "USE_CLEARCOAT_ROUGHNESSMAP",
  "USE_DISPERSION",
  "USE_DISPLACEMENTMAP",
  "USE_EMISSIVEMAP",
  "USE_ENVMAP",
  "USE_FOG",
  "USE_INSTANCING_MORPH",
  "USE_IRIDESCENCE",
  "USE_LIGHTMAP",
  "USE_LOGARITHMIC_DEPTH_BUFFER",
  "USE_METALNESSMAP",
  "USE_MORPHCOLORS",
  "USE_MORPHNORMALS",
  "USE_MORPHTARGETS",
  "USE_ROUGHNESSMAP",
  "USE_SHADOWMAP",
  "USE_SHEEN",
  "USE_SKINNING",
  "USE_SPECULARMAP",
  "USE_TRANSMISSION",
])

/** Materials that this page does not have, by their names in three's list of shaders. */
const NEVER_MADE = [
  "background",
  "backgroundCube",
  "cube",
  "depth",
  "distance",
  "equirect",
  "linedashed",
  "meshlambert",
  "meshmatcap",
  "meshnormal",
  "meshphong",
  "meshtoon",
  "points",
  "shadow",
  "sprite",
] as const

/** A shader without what stands behind a switch that is never set, without comments and indentation. */
export function slimShader(source: string): string {
  const kept: string[] = []
  /** One entry an open condition: whether it is settled here, and whether its present branch is kept. */
  const open: { readonly settled: boolean; keeps: boolean }[] = []
  for (const line of source.replace(/\/\*[\s\S]*?\*\//g, "").split("\n")) {
    const text = line.replace(/\/\/.*$/, "").trim()
    const [, directive = "", condition = ""] = /^#\s*(ifdef|ifndef|if|elif|else|endif)\b\s*(.*)$/.exec(text) ?? []
    const here = open.at(-1)
    if (directive === "ifdef" || directive === "ifndef" || directive === "if") {
      const never = NEVER_SET.has(switchIn(directive, condition))
      open.push({ settled: never, keeps: !never || directive === "ifndef" })
      if (never) continue
    } else if (here?.settled) {
      if (directive === "elif") throw new Error(`a switch that is never set has a second condition: ${text}`)
      if (directive === "else") here.keeps = !here.keeps
      if (directive === "endif") open.pop()
      if (directive !== "") continue
    } else if (directive === "endif") {
      open.pop()
      if (open.every(({ keeps }) => keeps)) kept.push(text)
      continue
    }
    if (text !== "" && open.every(({ keeps }) => keeps)) kept.push(text)
  }
  if (open.length > 0) throw new Error("a condition is not closed")
  return kept.join("\n")
}

/** The one switch that a condition asks for; nothing for a condition of several. */
function switchIn(directive: string, condition: string): string {
  if (directive !== "if") return condition
  return /^defined\s*\(\s*(\w+)\s*\)$/.exec(condition)?.[1] ?? ""
}

/** three's renderer with slim shaders. @throws Error when its list of shaders is not as expected. */
export function slimShaders(three: string): string {
  const list = /\nconst ShaderChunk = \{([\s\S]*?)\n\};/.exec(three)?.[1]
  if (list === undefined) throw new Error("three no longer lists its shaders in ShaderChunk")
  const named = new Map([...list.matchAll(/(\w+): ([\w$]+)/g)].map(([, name, constant]) => [name!, constant!]))
  const dropped = new Set(
    NEVER_MADE.flatMap((material) => ["vert", "frag"].map((kind) => `${material}_${kind}`)).map((name) => {
      const constant = named.get(name)
      if (constant === undefined) throw new Error(`three no longer has the shader ${name}`)
      return constant
    }),
  )
  const shaders = new Set(named.values())
  let found = 0
  const slim = three.replace(/^(var|const) ([\w$]+) = ("(?:[^"\\]|\\.)*");$/gm, (whole, keyword, constant, literal) => {
    if (!shaders.has(constant)) return whole
    found++
    return `${keyword} ${constant} = ${JSON.stringify(dropped.has(constant) ? "" : slimShader(JSON.parse(literal)))};`
  })
  if (found !== shaders.size) throw new Error(`of three's ${shaders.size} shaders, ${found} were found`)
  return slim
}
