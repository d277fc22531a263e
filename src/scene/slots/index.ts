import { nameCounter } from "../assemble/parts"
import type { PathStep } from "../errors"
import {
  accessoryFields,
  archerFields,
  armFields,
  bowFields,
  compoundLimbFields,
  elementFields,
  gyrationMm,
  mountFields,
  placeMm,
  poseFields,
  recurveLimbFields,
  sizeMm,
  targetFields,
} from "../fields"
import { mountNames } from "../mountNames"
import type { Bow, Element, Scene } from "../schema"
import { type Collector, type SlotGroup, slotGroup } from "./collect"
import { AXES, GYRATION_AXES, type Slot } from "./slot"

export { AXES, GYRATION_AXES, type Slot } from "./slot"

const wholes = new WeakMap<Scene, readonly Slot[]>()
const parts = new WeakMap<Scene, readonly NamedGroup[]>()

/** Every editable number of a scene, in the order of the file. */
export function slotsOf(scene: Scene): readonly Slot[] {
  const known = wholes.get(scene)
  if (known !== undefined) return known
  const slots = groupsOf(scene).flatMap(({ group }) => group.slots)
  wholes.set(scene, slots)
  return slots
}

/** The slot called `key`, or undefined when the scene has no such number. */
export function slotNamed(scene: Scene, key: string): Slot | undefined {
  const holder = /^[^/:]*/.exec(key)![0]
  for (const { name, group } of groupsOf(scene)) {
    const found = name === holder ? group.named(key) : undefined
    if (found !== undefined) return found
  }
  return undefined
}

interface NamedGroup {
  /** What all its keys begin with, up to the first slash or colon. */
  readonly name: string
  readonly group: SlotGroup
}

/** The slots of a scene by what holds them. A group is kept for as long as its part of the document is the same object. */
function groupsOf(scene: Scene): readonly NamedGroup[] {
  const known = parts.get(scene)
  if (known !== undefined) return known
  const { bow, accessories, mounts, rig, archer, target, pose } = scene
  const named = (name: string, group: SlotGroup): NamedGroup => ({ name, group })
  const held = (name: string, holder: object, fill: (into: Collector) => void) =>
    named(name, slotGroup(holder, name, fill))
  const groups = [
    held("bow", bow, (into) => bowSlots(into, bow)),
    held("accessories", accessories, (into) => accessorySlots(into, accessories)),
    held("mounts", mounts, (into) => mountSlots(into, mounts)),
    ...rig.map(({ mount, chain }, index) => named(mount, chainGroup(chain, mount, ["rig", index, "chain"]))),
    held("archer", archer, (into) => into.all("archer", ["archer"], archerFields, archer)),
    held("target", target, (into) => targetSlots(into, target)),
    held("pose", pose, (into) => into.all("pose", ["pose"], poseFields, pose)),
  ]
  parts.set(scene, groups)
  return groups
}

function bowSlots(into: Collector, bow: Bow) {
  const f = bowFields
  into.number("bow/riser", "massG", ["bow", "riser", "massG"], f.riserMassG, bow.riser.massG)
  into.list("bow/riser", "centreMm", ["bow", "riser"], placeMm, bow.riser.centreMm, AXES)
  into.list("bow/riser", "gyrationMm", ["bow", "riser"], gyrationMm, bow.riser.gyrationMm, GYRATION_AXES)
  limbSlots(into, bow)
  into.number("bow", "centreLineMm", ["bow", "centreLineMm"], f.centreLineMm, bow.centreLineMm)
  into.number("bow/string", "massG", ["bow", "string", "massG"], f.stringMassG, bow.string.massG)
  into.number("bow", "braceHeightMm", ["bow", "braceHeightMm"], f.braceHeightMm, bow.braceHeightMm)
  into.number("bow", "drawLengthMm", ["bow", "drawLengthMm"], f.drawLengthMm, bow.drawLengthMm)
  into.number("bow", "drawWeightLbf", ["bow", "drawWeightLbf"], f.drawWeightLbf, bow.drawWeightLbf)
  if (bow.kind === "compound") {
    into.number("bow", "letOffPercent", ["bow", "letOffPercent"], f.letOffPercent, bow.letOffPercent)
  }
  into.number("bow", "nockHeightMm", ["bow", "nockHeightMm"], f.nockHeightMm, bow.nockHeightMm)
  into.number("bow/arrow", "massG", ["bow", "arrow", "massG"], f.arrowMassG, bow.arrow.massG)
  into.number("bow/arrow", "lengthMm", ["bow", "arrow", "lengthMm"], f.arrowLengthMm, bow.arrow.lengthMm)
}

function limbSlots(into: Collector, bow: Bow) {
  const owner = "bow/limbs"
  const at = ["bow", "limbs"]
  if (bow.kind === "recurve") {
    const { rootForwardMm, rootOutMm, ...named } = recurveLimbFields
    into.number(owner, "rootMm.forward", [...at, "rootMm", 0], rootForwardMm, bow.limbs.rootMm[0])
    into.number(owner, "rootMm.out", [...at, "rootMm", 1], rootOutMm, bow.limbs.rootMm[1])
    into.all(owner, at, named, bow.limbs)
    return
  }
  const f = compoundLimbFields
  into.number(owner, "massG", [...at, "massG"], f.massG, bow.limbs.massG)
  into.number(owner, "centreMm.forward", [...at, "centreMm", 0], f.forwardMm, bow.limbs.centreMm[0])
  into.number(owner, "centreMm.out", [...at, "centreMm", 1], f.outMm, bow.limbs.centreMm[1])
  into.number(owner, "drawnShiftMm.forward", [...at, "drawnShiftMm", 0], f.shiftForwardMm, bow.limbs.drawnShiftMm[0])
  into.number(owner, "drawnShiftMm.out", [...at, "drawnShiftMm", 1], f.shiftOutMm, bow.limbs.drawnShiftMm[1])
  into.list(owner, "gyrationMm", at, gyrationMm, bow.limbs.gyrationMm, GYRATION_AXES)
}

function accessorySlots(into: Collector, accessories: Scene["accessories"]) {
  const named = nameCounter()
  accessories.forEach((accessory, index) => {
    const owner = `accessories/${named(accessory.name)}`
    const at = ["accessories", index]
    into.number(owner, "massG", [...at, "massG"], accessoryFields.massG, accessory.massG)
    into.list(owner, "centreMm", at, placeMm, accessory.centreMm, AXES)
    if (accessory.sizeMm !== undefined) into.list(owner, "sizeMm", at, sizeMm, accessory.sizeMm, AXES)
  })
}

function mountSlots(into: Collector, mounts: Scene["mounts"]) {
  for (const name of mountNames) {
    const mount = mounts[name]
    if (mount === undefined) continue
    const at = ["mounts", name]
    into.list(`mounts/${name}`, "atMm", at, placeMm, mount.atMm, AXES)
    into.all(`mounts/${name}`, at, mountFields, mount)
  }
}

function chainGroup(chain: readonly Element[], prefix: string, address: readonly PathStep[]): SlotGroup {
  return slotGroup(chain, `${prefix} at ${address.join(" ")}`, (into) => {
    const named = nameCounter()
    chain.forEach((element, index) => {
      const owner = `${prefix}/${named(element.part)}`
      const at = [...address, index]
      into.add(slotGroup(element, `${owner} at ${at.join(" ")}`, (own) => elementSlots(own, element, owner, at)))
    })
  })
}

function elementSlots(into: Collector, element: Element, owner: string, at: readonly PathStep[]) {
  into.all(owner, at, elementFields[element.part], element)
  if (element.part !== "vbar") return
  for (const side of ["left", "right"] as const) {
    const arm = element[side]
    if (arm === undefined) continue
    into.all(`${owner}/${side}`, [...at, side], armFields, arm)
    into.add(chainGroup(arm.chain, `${owner}/${side}`, [...at, side, "chain"]))
  }
}

function targetSlots(into: Collector, target: Scene["target"]) {
  for (const name of ["forwardMm", "upMm", "sideMm", "netLiftNm"] as const) {
    const range = target[name]
    if (range === undefined) continue
    into.list("target", name, ["target"], targetFields[name], range, ["from", "to"])
  }
  into.number("target", "massMaxG", ["target", "massMaxG"], targetFields.massMaxG, target.massMaxG)
}
