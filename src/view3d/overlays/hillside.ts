import { BufferAttribute, BufferGeometry, Color, DoubleSide, Group, ShaderMaterial } from "three"
import type { Vec3 } from "../../core/solids"
import { hillTargetLabel } from "../../describe/hillWords"
import { slopeText } from "../../describe/poseText"
import { hillRise, hillSpan, TERRACE } from "../../picture/hill"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { layAlong, layBetween, mesh } from "../shapes/placing"
import { unitStroke, unitTube } from "../shapes/solids"
import { emptyTerrain, layTerrain, STRIP } from "../shapes/terrain"

/** The target as drawn: near and small, so that the bow stays large. m. */
const BUTT = { radius: 0.11, thickness: 0.05, above: 0.17, leg: 0.09 }
/** Its face, from the rim in: light and dark in turn, each a hair before the last. */
const RINGS = [
  { part: 1, look: "fletching", proud: 0 },
  { part: 0.7, look: "weight", proud: 0.002 },
  { part: 0.42, look: "fletching", proud: 0.004 },
  { part: 0.16, look: "carbon", proud: 0.006 },
] as const
/** The level line that the slope is seen against, m. */
const LEVEL = 0.3

/** The hillside under the archer and the target on it, up or down the hill. World axes; nothing on the level. */
export function hillsideOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  const terrain = emptyTerrain()
  const geometry = new BufferGeometry()
  geometry.setAttribute("position", new BufferAttribute(terrain.positions, 3))
  geometry.setAttribute("place", new BufferAttribute(terrain.places, 3))
  geometry.setIndex(new BufferAttribute(terrain.indices, 1))
  const material = soil(looks)
  const ground = mesh(geometry, material)
  ground.renderOrder = -3
  const stroke = (ink: "ink-soft" | "line-strong", width: number, opacity: number) => {
    const made = mesh(unitStroke, looks.stroke(ink, width, opacity))
    made.renderOrder = -2
    return made
  }
  const edges = [0, 1, 2].map(() => stroke("line-strong", 2, 0.9))
  const way = [stroke("ink-soft", 2.2, 0.9), stroke("ink-soft", 2.2, 0.9)]
  const level = stroke("ink-soft", 1.2, 0.8)
  const rings = RINGS.map(({ look }) => mesh(unitTube, looks.surface(look)))
  const legs = [-1, 1].map(() => mesh(unitTube, looks.surface("shaft")))
  object.add(ground, ...edges, ...way, level, ...rings, ...legs)
  let drawn = { slope: Number.NaN, to: Number.NaN }

  const lay = (slope: number, to: number) => {
    const ends = layTerrain(terrain, slope, to)
    geometry.getAttribute("position").needsUpdate = true
    geometry.getAttribute("place").needsUpdate = true
    material.uniforms.ends!.value = ends
    const at = (x: number, z: number, above = 0): Vec3 => [x, hillRise(x, slope) + above, z]
    const span = hillSpan(to)
    // The last bit of either end fades away, so its edge stops where the fading begins.
    const corners = [span.from + 0.2, -TERRACE, TERRACE, span.to - 0.2]
    edges.forEach((edge, index) => {
      layBetween(edge, at(corners[index]!, STRIP.half), at(corners[index + 1]!, STRIP.half))
    })
    layBetween(way[0]!, at(0.1, 0), at(TERRACE, 0))
    layBetween(way[1]!, at(TERRACE, 0), at(to - BUTT.thickness, 0))
    layBetween(level, at(TERRACE, 0), [TERRACE + LEVEL, 0, 0])
    rings.forEach((ring, index) => {
      const { part, proud } = RINGS[index]!
      layAlong(ring, at(to - proud, 0, BUTT.above), [1, 0, 0], BUTT.thickness, BUTT.radius * part)
    })
    legs.forEach((leg, index) => {
      const z = (index === 0 ? -1 : 1) * BUTT.leg
      const foot = to + BUTT.thickness + 0.02
      layBetween(leg, at(foot, z), [to + BUTT.thickness / 2, hillRise(to, slope) + BUTT.above, z * 0.7], 0.006)
    })
  }

  return {
    object,
    update({ state: { preferences }, hillDeg, ground: height, line }) {
      const { show } = preferences
      object.visible = show.ground && hillDeg !== 0
      const words = object.visible && show.labels
      if (!object.visible) {
        labels.put("hill-target", null)
        labels.put("hill-slope", null)
        return
      }
      object.position.y = height
      if (drawn.slope !== hillDeg || drawn.to !== line.to) lay(hillDeg, line.to)
      drawn = { slope: hillDeg, to: line.to }
      const top: Vec3 = [line.to, height + hillRise(line.to, hillDeg) + BUTT.above + BUTT.radius, 0]
      const target = { text: hillTargetLabel(hillDeg), at: top, side: "above", look: "way", rank: 7 } as const
      labels.put("hill-target", words ? target : null)
      const at: Vec3 = [TERRACE + LEVEL, height, 0]
      const slope = { text: slopeText(hillDeg), at, side: "right", look: "plain", rank: 2 } as const
      labels.put("hill-slope", words ? slope : null)
    },
    dispose() {
      labels.put("hill-target", null)
      labels.put("hill-slope", null)
      geometry.dispose()
      material.dispose()
    },
  }
}

/** Even ground with lines a tenth of a metre apart, fading away at both ends and down the cut face. */
function soil(looks: Looks): ShaderMaterial {
  const material = new ShaderMaterial({
    uniforms: { fill: { value: new Color() }, lines: { value: new Color() }, ends: { value: [-1, 1] } },
    transparent: true,
    depthWrite: false,
    side: DoubleSide,
    vertexShader: /* glsl */ `
attribute vec3 place;
varying vec3 at;
void main() {
  at = place;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`,
    fragmentShader: /* glsl */ `
uniform vec3 fill;
uniform vec3 lines;
uniform vec2 ends;
varying vec3 at;
void main() {
  vec2 cell = at.xy / 0.1;
  vec2 width = max(fwidth(cell), vec2(1e-4));
  vec2 off = abs(fract(cell - 0.5) - 0.5) / width;
  // Where the lines would run into each other they fade into the ground.
  vec2 seen = (1.0 - min(off, 1.0)) * (1.0 - smoothstep(0.2, 0.7, width));
  float line = max(seen.x, seen.y) * step(at.z, 0.001) * 0.5;
  float fade = smoothstep(0.0, 0.3, min(at.x - ends.x, ends.y - at.x)) * (1.0 - at.z);
  gl_FragColor = vec4(mix(fill, lines, line), (0.55 + 0.3 * line) * fade);
  #include <colorspace_fragment>
}`,
  })
  looks.follow("line", (colour) => material.uniforms.fill!.value.copy(colour))
  looks.follow("line-strong", (colour) => material.uniforms.lines!.value.copy(colour))
  return material
}
