import { Color, Group, ShaderMaterial } from "three"
import { multiply, type Vec3 } from "../../core/solids"
import { BALANCE_TARGET } from "../../describe/pictureWords"
import type { Target } from "../../scene/schema"
import type { Labels } from "../labels"
import type { Looks } from "../looks"
import type { Drawn } from "../picture"
import { mesh } from "../shapes/placing"
import { unitBox, unitBoxEdges } from "../shapes/solids"

export interface Zone {
  readonly centre: Vec3
  readonly size: Vec3
}

/** How far the zone is drawn along a direction the target leaves open, m. */
const OPEN = { forward: [-0.15, 0.3], up: [-0.26, 0.1], side: [-0.045, 0.045] } as const
/** A zone wanted at one exact place is still drawn this thick, m. */
const THINNEST = 0.001

/** The box of balance points that meet the target, bow axes, m; null for a target that names no place. */
export function targetZone(target: Target): Zone | null {
  const { forwardMm, upMm, sideMm } = target
  if (forwardMm === undefined && upMm === undefined && sideMm === undefined) return null
  const spans = [span(forwardMm, OPEN.forward), span(upMm, OPEN.up), span(sideMm, OPEN.side)] as const
  return {
    centre: [(spans[0][0] + spans[0][1]) / 2, (spans[1][0] + spans[1][1]) / 2, (spans[2][0] + spans[2][1]) / 2],
    size: [width(spans[0]), width(spans[1]), width(spans[2])],
  }
}

type Span = readonly [number, number]
const span = (range: Span | undefined, open: Span): Span =>
  range === undefined ? open : [Math.min(...range) * 1e-3, Math.max(...range) * 1e-3]
const width = ([from, to]: Span): number => Math.max(to - from, THINNEST)

/** A hatched box with drawn edges, so that it reads without colour. In bow axes: its object belongs in the bow's group. */
export function targetOverlay(looks: Looks, labels: Labels): Drawn {
  const object = new Group()
  const material = hatching()
  looks.follow("ink", (colour) => material.uniforms.colour!.value.copy(colour))
  const fill = mesh(unitBox, material)
  const edges = mesh(unitBoxEdges, looks.stroke("ink", 1.2, 0.6))
  fill.renderOrder = 5
  edges.renderOrder = 6
  object.add(fill, edges)
  return {
    object,
    update({ state: { preferences }, evaluation: { scene, now } }) {
      const zone = preferences.show.target ? targetZone(scene.target) : null
      object.visible = zone !== null
      if (zone === null) {
        labels.put("target-zone", null)
        return
      }
      object.position.set(...zone.centre)
      object.scale.set(...zone.size)
      const below: Vec3 = [zone.centre[0], zone.centre[1] - zone.size[1] / 2, zone.centre[2]]
      const at = multiply(now.rotation, below)
      const wish = { text: BALANCE_TARGET, at, side: "below", look: "plain", rank: 6 } as const
      labels.put("target-zone", preferences.show.labels ? wish : null)
    },
    dispose: () => material.dispose(),
  }
}

const hatching = (): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: { colour: { value: new Color() } },
    transparent: true,
    depthWrite: false,
    vertexShader: /* glsl */ `
void main() {
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}`,
    fragmentShader: /* glsl */ `
uniform vec3 colour;
void main() {
  float stripe = step(mod(gl_FragCoord.x + gl_FragCoord.y, 8.0), 1.4);
  gl_FragColor = vec4(colour, mix(0.05, 0.3, stripe));
  #include <colorspace_fragment>
}`,
  })
