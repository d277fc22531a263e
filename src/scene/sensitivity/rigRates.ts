import { RADIAN_PER_DEGREE as DEGREE } from "../../core/constants"
import { armDirection, droopTurn, pitchTurn, splayTurn, yawTurn } from "../../core/rig"
import { type MassMoments, momentsOf, movedRates, sumMoments } from "../../core/sensitivity"
import { along, scale, type Vec3 } from "../../core/solids"
import { type Axis, elementMassG, GRAM, metres, type Part } from "../assemble"
import { nameCounter } from "../assemble/parts"
import type { PoseBalance } from "../evaluate"
import { mountNames } from "../mountNames"
import type { Arm, Element, Mount, MountName, PartOf, Scene } from "../schema"
import { AXES } from "../slots"
import {
  type Carried,
  NOTHING_OUTWARD,
  type Outward,
  totalOf,
  turnedOutward,
  withCarried,
  withTurning,
} from "./outward"
import { perDegree, perMm, put, type Rates, UNIT_AXES, WEIGHS_NOTHING } from "./rates"
import { swingBody, swingRates } from "./swings"
import { type ElementRates, rodRates, type TubeRates, tubeRates, weightsRates } from "./tubes"

/**
 * Rates of the mass moments by every mount and rig slot, per file unit, with the rig as it stands in `balance`.
 * Chains are walked from their outer ends inward, so that each element knows all it carries as one body.
 */
export function rigRates(scene: Scene, balance: PoseBalance, into: Rates): void {
  const walk = new RigWalk(balance, into)
  for (const name of mountNames) {
    const mount = scene.mounts[name]
    if (mount === undefined) continue
    const chain = scene.rig.find((entry) => entry.mount === name)?.chain ?? []
    mountRates(name, mount, walk.chain(chain, name), into)
  }
}

function mountRates(name: MountName, mount: Mount, outward: Outward, into: Rates): void {
  const at = metres(mount.atMm)
  const all = totalOf(outward)
  AXES.forEach((axis, i) => {
    into.set(`mounts/${name}:atMm.${axis}`, perMm(movedRates(all, UNIT_AXES[i] as Vec3)))
  })
  put(into, `mounts/${name}`, {
    pitchDeg: perDegree(turnedOutward(outward, pitchTurn(mount.yawDeg * DEGREE), at)),
    yawDeg: perDegree(turnedOutward(outward, yawTurn, at)),
  })
}

interface CarriedArm extends Carried {
  readonly direction: Vec3
}

class RigWalk {
  private readonly parts: ReadonlyMap<string, Part>
  private readonly gravity: Vec3
  private readonly into: Rates

  constructor(balance: PoseBalance, into: Rates) {
    this.parts = new Map(balance.parts.map((part) => [part.path, part]))
    this.gravity = balance.gravity
    this.into = into
  }

  chain(chain: readonly Element[], prefix: string): Outward {
    const named = nameCounter()
    const paths = chain.map((element) => `${prefix}/${named(element.part)}`)
    return chain.reduceRight((beyond, element, i) => this.element(element, paths[i] as string, beyond), NOTHING_OUTWARD)
  }

  /** Files an element's own rates and returns it together with what was `beyond` it. */
  private element(element: Element, path: string, beyond: Outward): Outward {
    const part = this.parts.get(path)
    if (element.part === "swing") {
      const hung = part?.hung
      if (hung === undefined) return beyond
      put(this.into, path, swingRates(hung, this.gravity))
      return withCarried(beyond, { at: hung.hinge, body: swingBody(hung) })
    }
    const axis = part?.axis
    if (axis === undefined) return beyond
    const arms = element.part === "vbar" ? this.arms(element, axis, path) : []
    this.tube(element, axis, path, beyond, arms)
    const own = sumMoments(...(part?.solids ?? []).map(momentsOf))
    return withCarried(withTurning(beyond, own), ...arms)
  }

  private tube(
    element: Exclude<Element, PartOf<"swing">>,
    axis: Axis,
    path: string,
    beyond: Outward,
    arms: readonly CarriedArm[],
  ): void {
    const own = tubeRates(elementMassG(element) * GRAM, axis)
    const lengthening = sumMoments(
      own.length,
      movedRates(totalOf(beyond), axis.direction),
      // Arms start at the middle.
      ...arms.map(({ body }) => movedRates(body, scale(axis.direction, 1 / 2))),
    )
    put(this.into, path, ratesOf(element, own, lengthening, arms))
  }

  /** Both arms with all on them, carried by the V-bar's middle; files their angles' rates. */
  private arms(element: PartOf<"vbar">, axis: Axis, path: string): CarriedArm[] {
    const middle = along(axis.start, axis.direction, axis.length / 2)
    return (["left", "right"] as const).flatMap((side) => {
      const arm: Arm | undefined = element[side]
      if (arm === undefined) return []
      const outward = this.chain(arm.chain, `${path}/${side}`)
      put(this.into, `${path}/${side}`, {
        splayDeg: perDegree(turnedOutward(outward, splayTurn(side), middle)),
        droopDeg: perDegree(turnedOutward(outward, droopTurn(arm.splayDeg * DEGREE, side), middle)),
      })
      const direction = armDirection(arm.splayDeg * DEGREE, arm.droopDeg * DEGREE, side)
      return [{ at: middle, body: totalOf(outward), direction }]
    })
  }
}

function ratesOf(
  element: Exclude<Element, PartOf<"swing">>,
  own: TubeRates,
  lengthening: MassMoments,
  arms: readonly CarriedArm[],
): Readonly<Record<string, MassMoments>> {
  switch (element.part) {
    case "extender":
      return rodRates(own, lengthening)
    case "rod":
      return { ...rodRates(own, lengthening), maxEndWeightG: WEIGHS_NOTHING }
    case "damper":
      return { ...rodRates(own, lengthening), stiffnessNmPerRad: WEIGHS_NOTHING }
    case "weights":
      return weightsRates(element, own, lengthening)
    case "vbar": {
      const { massG, lengthMm, outerMm } = rodRates(own, lengthening)
      const outing = sumMoments(...arms.map(({ body, direction }) => movedRates(body, direction)))
      return { massG, lengthMm, outerMm, armOffsetMm: perMm(outing) } satisfies ElementRates<"vbar">
    }
  }
}
