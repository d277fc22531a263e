import { Color, type Material, MeshStandardMaterial, ShaderMaterial, Vector2 } from "three"

/** What drawn things are made of; each has a colour `--part-<look>` in the style sheet. */
const surfaces = {
  riser: { roughness: 0.42, metalness: 0.25 },
  grip: { roughness: 0.6, metalness: 0 },
  carbon: { roughness: 0.33, metalness: 0.15 },
  tube: { roughness: 0.38, metalness: 0.3 },
  metal: { roughness: 0.3, metalness: 0.35 },
  weight: { roughness: 0.34, metalness: 0.35 },
  rubber: { roughness: 0.9, metalness: 0 },
  limb: { roughness: 0.45, metalness: 0 },
  cam: { roughness: 0.4, metalness: 0.3 },
  string: { roughness: 0.8, metalness: 0 },
  shaft: { roughness: 0.4, metalness: 0.1 },
  fletching: { roughness: 0.8, metalness: 0 },
  accessory: { roughness: 0.6, metalness: 0 },
} as const
export type Look = keyof typeof surfaces

/** Theme colours used by what is drawn about the bow. */
export type Ink = "balance" | "compared" | "ink" | "ink-soft" | "line" | "line-strong" | "panel"

/** Shown where the style sheet has no colour of that name: a plain middle grey. */
const UNNAMED = "#808080"

export interface Looks {
  surface(look: Look): Material
  /** The same, brighter, for the part pointed at. */
  lit(plain: Material): Material
  /** A line of `width` CSS px, for `strokeGeometry`. */
  stroke(ink: Ink, width: number, opacity?: number): Material
  /** Even colour, seen through everything in front of it. */
  mark(ink: Ink): Material
  /** Colour of an ink now, for materials of one's own; `changed` is called with it at once and after each theme change. */
  follow(ink: Ink, changed: (colour: Color) => void): void
  /** Lines drawn around the part pointed at: a light one within a dark one, to be seen on any ground. */
  readonly outlines: readonly [outer: Material, inner: Material]
  /** Size of the picture, CSS px. */
  readonly pixels: Vector2
  /** Reads all colours again from the style sheet. */
  recolour(): void
  dispose(): void
}

/** `styles` is the live computed style of an element in the picture. */
export function createLooks(styles: CSSStyleDeclaration): Looks {
  const pixels = new Vector2(1, 1)
  const followers: { name: string; changed: (colour: Color) => void }[] = []
  const colours = new Map<string, Color>()
  const made = new Map<string, Material>()
  const lit = new Map<Material, Material>()
  const colour = (name: string) => {
    const known = colours.get(name)
    if (known !== undefined) return known
    const fresh = new Color(styles.getPropertyValue(`--${name}`).trim() || UNNAMED)
    colours.set(name, fresh)
    return fresh
  }

  const follow = (name: string, changed: (colour: Color) => void) => {
    followers.push({ name, changed })
    changed(colour(name))
  }
  const once = (key: string, make: () => Material): Material => {
    const known = made.get(key)
    if (known !== undefined) return known
    const fresh = make()
    made.set(key, fresh)
    return fresh
  }
  const standard = (name: string, look: Look, glow: number): MeshStandardMaterial => {
    const material = new MeshStandardMaterial(surfaces[look])
    if (look === "accessory") Object.assign(material, { transparent: true, opacity: 0.72, depthWrite: true })
    follow(name, (c) => {
      material.color.copy(c)
      material.emissive.copy(c).multiplyScalar(glow)
    })
    return material
  }
  const surface = (look: Look) => once(look, () => standard(`part-${look}`, look, 0))

  const outer = strokeLike(outlineVertex, pixels, 4.5)
  const inner = strokeLike(outlineVertex, pixels, 2.5)
  follow("ink", (c) => outer.uniforms.colour!.value.copy(c))
  follow("panel", (c) => inner.uniforms.colour!.value.copy(c))

  return {
    surface,
    lit(plain) {
      const look = (Object.keys(surfaces) as Look[]).find((name) => made.get(name) === plain)
      if (look === undefined) return plain
      const known = lit.get(plain)
      if (known !== undefined) return known
      const fresh = standard(`part-${look}`, look, 0.35)
      lit.set(plain, fresh)
      return fresh
    },
    stroke: (ink, width, opacity = 1) =>
      once(`${ink} ${width} ${opacity}`, () => {
        const material = strokeLike(strokeVertex, pixels, width, opacity)
        follow(ink, (c) => material.uniforms.colour!.value.copy(c))
        return material
      }),
    mark: (ink) =>
      once(`mark-${ink}`, () => {
        const material = new MeshStandardMaterial({ roughness: 0.6, depthTest: false, transparent: true })
        follow(ink, (c) => {
          material.color.copy(c)
          material.emissive.copy(c).multiplyScalar(0.6)
        })
        return material
      }),
    follow,
    outlines: [outer, inner],
    pixels,
    recolour() {
      colours.clear()
      for (const { name, changed } of followers) changed(colour(name))
    },
    dispose() {
      for (const material of [...made.values(), ...lit.values(), outer, inner]) material.dispose()
    },
  }
}

/** Lines as thin flat quads of a fixed width on the screen; graphics cards draw their own lines one pixel wide at most. */
const strokeVertex = /* glsl */ `
attribute vec3 other;
attribute vec2 corner;
uniform vec2 pixels;
uniform float width;
void main() {
  vec4 here = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
  vec4 there = projectionMatrix * modelViewMatrix * vec4(other, 1.0);
  vec2 way = (there.xy / there.w - here.xy / here.w) * pixels;
  float span = length(way);
  way = span > 1e-4 ? way / span : vec2(1.0, 0.0);
  here.xy += (vec2(-way.y, way.x) * corner.y - way * corner.x) * width / pixels * here.w;
  gl_Position = here;
}`

/** The same body, each vertex moved outward along its normal by a fixed width on the screen; seen from its inside only. */
const outlineVertex = /* glsl */ `
uniform vec2 pixels;
uniform float width;
void main() {
  vec3 facing = normal;
  vec4 place = vec4(position, 1.0);
  #ifdef USE_INSTANCING
    place = instanceMatrix * place;
    facing = mat3(instanceMatrix) * facing;
  #endif
  vec4 clip = projectionMatrix * modelViewMatrix * place;
  vec2 way = normalize(normalMatrix * facing).xy;
  clip.xy += way * 2.0 * width / pixels * clip.w;
  gl_Position = clip;
}`

function strokeLike(vertexShader: string, pixels: Vector2, width: number, opacity = 1): ShaderMaterial {
  return new ShaderMaterial({
    uniforms: {
      pixels: { value: pixels },
      width: { value: width },
      opacity: { value: opacity },
      colour: { value: new Color() },
    },
    vertexShader,
    fragmentShader: /* glsl */ `
uniform vec3 colour;
uniform float opacity;
void main() {
  gl_FragColor = vec4(colour, opacity);
  #include <colorspace_fragment>
}`,
    // Quads face either way; the outline's hull is turned inside out.
    side: vertexShader === outlineVertex ? 1 : 2,
    transparent: true,
    depthTest: vertexShader === outlineVertex,
    depthWrite: false,
  })
}
