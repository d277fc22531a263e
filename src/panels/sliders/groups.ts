import { partNames } from "../../describe/partNames"
import type { MountName, Scene } from "../../scene/schema"
import { type Slot, slotsOf } from "../../scene/slots"
import { partWords } from "../../words/partWords"
import { sliders as words } from "../../words/sliders"

/** One slider: the slot it moves and how far it goes, in the file's unit. */
export interface Slider {
  readonly key: string
  readonly label: string
  readonly from: number
  readonly to: number
}

export interface SliderGroup {
  readonly title: string
  readonly sliders: readonly Slider[]
}

/**
 * How far a slider goes for each kind of number that gets one: what a coach turns at the bench, over the span that is
 * met there (common practice, no source). Text fields take the whole range.
 */
const USUAL: readonly { readonly slot: RegExp; readonly from: number; readonly to: number; readonly label?: string }[] =
  [
    { slot: /\/rod(#\d+)?:lengthMm$/, from: 50, to: 1000 },
    { slot: /\/extender(#\d+)?:lengthMm$/, from: 10, to: 300 },
    { slot: /\/weights(#\d+)?:count$/, from: 0, to: 20 },
    { slot: /:splayDeg$/, from: -30, to: 120 },
    { slot: /:droopDeg$/, from: -60, to: 90 },
    { slot: /\/swing(#\d+)?:stemLengthMm$/, from: 20, to: 400, label: words.stemLength },
    { slot: /\/swing(#\d+)?:bobMassG$/, from: 0, to: 500, label: words.bobMass },
    { slot: /^bow:braceHeightMm$/, from: 150, to: 260 },
    { slot: /^bow:drawWeightLbf$/, from: 10, to: 70 },
    { slot: /^bow:nockHeightMm$/, from: 0, to: 120 },
    { slot: /^archer:elbowElevationDeg$/, from: -15, to: 30, label: words.elbow },
    { slot: /^pose:draw$/, from: 0, to: 1 },
    { slot: /^pose:(slope|cant)Deg$/, from: -45, to: 45 },
  ]

/** The sliders of a scene under their headings: the pose, each chain of the rig, the bow with its archer. */
export function sliderGroups(scene: Scene): SliderGroup[] {
  const groups = new Map<string, Slider[]>()
  for (const slot of slotsOf(scene)) {
    const usual = USUAL.find((candidate) => candidate.slot.test(slot.key))
    if (usual === undefined) continue
    const title = groupTitle(scene, slot)
    const sliders = groups.get(title) ?? []
    groups.set(title, sliders)
    sliders.push({
      key: slot.key,
      label: usual.label ?? sliderLabel(scene, slot),
      // A value out of the usual gets the field's whole range: a slider that grew with it would move under the hand.
      from: slot.value < usual.from ? slot.field.min : Math.max(usual.from, slot.field.min),
      to: slot.value > usual.to ? slot.field.max : Math.min(usual.to, slot.field.max),
    })
  }
  return [POSE, ...[...groups.keys()].filter((title) => title !== POSE && title !== BOW), BOW].flatMap((title) => {
    const sliders = groups.get(title)
    return sliders === undefined ? [] : [{ title, sliders }]
  })
}

const POSE = words.pose
const BOW = words.bow

function groupTitle(scene: Scene, { owner, key }: Slot): string {
  if (owner === "pose") return POSE
  if (owner === "bow" || owner === "archer") return BOW
  // An arm's own angles stand with what it carries.
  const chain = /:(splay|droop)Deg$/.test(key) ? owner : owner.slice(0, owner.lastIndexOf("/"))
  return partNames(scene).get(chain)?.title ?? partWords.mountTitles[chain as MountName]
}

function sliderLabel(scene: Scene, { owner, label }: Slot): string {
  const onItsOwn = owner === "pose" || owner === "bow" || owner === "archer" || /\/(left|right)$/.test(owner)
  const text = onItsOwn ? label : words.ofPart(partNames(scene).get(owner)?.short ?? owner, label)
  return text.charAt(0).toUpperCase() + text.slice(1)
}
