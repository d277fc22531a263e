import { RADIAN_PER_DEGREE as DEGREE } from "../core/constants"
import { armDirection, mountDirection, type Side } from "../core/rig"
import { add, along, type Vec3 } from "../core/solids"
import { partTitle } from "../describe/partNames"
import { twinKey } from "../scene/address"
import { metres, MM, nockPoint } from "../scene/assemble"
import type { Evaluation, WeighedPart } from "../scene/evaluate"
import { mountNames } from "../scene/mountNames"
import type { MountName, Scene } from "../scene/schema"
import { type Slot, slotNamed } from "../scene/slots"
import { picture as words } from "../words/picture"
import type { Handle, HandleKind, Pane } from "./handle"
import { nockAt, onString, pullEnd } from "./pull"
import { chainReach, turningRadii } from "./reach"

/** A stack's handle stands this far beyond its outer face, m, so that it is not on top of the rod end's. */
const BEYOND_STACK = 0.022
/** The mount's forward handle stands this far below its height handle, m. */
const BELOW_MOUNT = 0.03

/**
 * Everything in the picture that can be dragged, chain by chain from the front mount's outward, then the string: the
 * order in which the Tab key visits them. The front mount, which is where the riser's maker put it, and mounts that carry
 * nothing are to be had only while they are `chosen`, a path. `evaluation` must be that of `scene`.
 */
export function handlesOf(scene: Scene, { now }: Evaluation, chosen: string | null = null): Handle[] {
  const slot = (key: string) => slotNamed(scene, key)
  const nameOf = (path: string) => partTitle(scene, path)
  const distinct = distinctNames()
  const handles: Handle[] = []

  const put = (
    kind: HandleKind,
    key: string,
    label: string,
    seen: Pane,
    place: (value: number) => Vec3,
    hub: Vec3 | null = null,
    lifts = false,
  ) => {
    const own = slot(key)
    if (own === undefined) return
    const twin = twinKey(key)
    const paired = twin !== null && slot(twin) !== undefined ? twin : null
    handles.push({ key, kind, label: distinct(label), seen, place, hub, lifts, twin: paired, ...ofSlot(own) })
  }

  const partHandle = (part: WeighedPart) => {
    const { path, kind, axis, hung } = part
    const name = nameOf(path)
    const seen: Pane = onArm(path) ? "top" : "side"
    if (hung !== undefined) {
      put("length", `${path}:stemLengthMm`, words.handle(name, words.stem), "side", (mm) =>
        along(hung.hinge, hung.rest.direction, mm * MM),
      )
    }
    if (axis === undefined) return
    if (kind === "rod" || kind === "extender") {
      put("length", `${path}:lengthMm`, words.handle(name, words.length), seen, (mm) =>
        along(axis.start, axis.direction, mm * MM),
      )
    }
    if (kind === "weights") {
      const thickness = (slot(`${path}:thicknessMm`)?.value ?? 0) * MM
      put("count", `${path}:count`, name, seen, (count) =>
        along(axis.start, axis.direction, count * thickness + BEYOND_STACK),
      )
    }
    if (kind === "vbar") for (const side of ["left", "right"] as const) armHandles(part, side)
  }

  const armHandles = (vbar: WeighedPart, side: Side) => {
    const { axis, path } = vbar
    const arm = `${path}/${side}`
    if (axis === undefined || vbar.arms?.[side] === undefined) return
    const root = along(axis.start, axis.direction, axis.length / 2)
    const angleNow = (name: string) => slot(`${arm}:${name}`)?.value ?? 0
    const { far, near } = turningRadii(chainReach(now.parts, arm, root))
    const direction = (splay: number, droop: number) => armDirection(splay * DEGREE, droop * DEGREE, side)
    put("angle", `${arm}:splayDeg`, words.handle(nameOf(arm), words.splay), "top", (deg) =>
      along(root, direction(deg, angleNow("droopDeg")), near),
    )
    put("angle", `${arm}:droopDeg`, words.handle(nameOf(arm), words.droop), "side", (deg) =>
      along(root, direction(angleNow("splayDeg"), deg), far),
    )
  }

  const mountHandles = (name: MountName) => {
    const mount = scene.mounts[name]
    if (mount === undefined) return
    const at = metres(mount.atMm)
    const owner = `mounts/${name}`
    const title = nameOf(owner)
    const reach = chainReach(now.parts, name, at)
    const { far, near } = turningRadii(reach)
    const pointing = (pitch: number, yaw: number, radius: number) =>
      along(at, mountDirection(pitch * DEGREE, yaw * DEGREE), radius)
    const tilted = (deg: number) => pointing(deg, mount.yawDeg, far)
    const turned = (deg: number) => pointing(mount.pitchDeg, deg, near)
    put("place", `${owner}:atMm.up`, words.handle(title, words.height), "side", (mm) => [at[0], mm * MM, at[2]])
    put("place", `${owner}:atMm.forward`, words.handle(title, words.forward), "side", (mm) =>
      add([mm * MM, at[1], at[2]], [0, -BELOW_MOUNT, 0]),
    )
    // A chain that ends where it begins, such as a swing weight alone, is the same whichever way its mount points.
    if (reach === 0) return
    put("angle", `${owner}:pitchDeg`, words.handle(title, words.tilt), "side", tilted, at)
    put("angle", `${owner}:yawDeg`, words.handle(title, words.turn), "top", turned, at)
  }

  /** The nock, and once the bow is drawn what decides where the pull passes the grip. */
  const stringHandles = () => {
    const { limbs } = now
    put("draw", "pose:draw", words.draw, "side", (fraction) => nockAt(scene, fraction))
    if (limbs.drawFraction === 0) return
    const nock = nockPoint(scene.bow, limbs)
    const height = (mm: number) => onString(limbs, mm)
    const elbow = (deg: number) => pullEnd(nock, deg)
    put("length", "bow:nockHeightMm", words.nock, "side", height, null, true)
    put("angle", "archer:elbowElevationDeg", words.elbow, "side", elbow, null, true)
  }

  const used = new Set(scene.rig.filter(({ chain }) => chain.length > 0).map(({ mount }) => mount))
  for (const mount of mountNames) {
    if (chosen === `mounts/${mount}` || (used.has(mount) && mount !== "front")) mountHandles(mount)
    for (const part of now.parts) if (part.path.startsWith(`${mount}/`)) partHandle(part)
  }
  stringHandles()
  return handles
}

const ofSlot = ({ field, value, owner }: Slot) => ({ field, value, owner })

/** Parts may have been given the same label; the second then reads "… 2". */
function distinctNames(): (name: string) => string {
  const used = new Set<string>()
  return (name) => {
    let free = name
    for (let count = 2; used.has(free); count++) free = `${name} ${count}`
    used.add(free)
    return free
  }
}

const onArm = (path: string): boolean => /\/(left|right)\//.test(path)
