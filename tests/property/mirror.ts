import type { Arm, Element, Scene } from "../../src/scene/schema"

type Triple = [number, number, number]

/** Subtracting from zero makes no -0 of a 0. */
const flipped = (value: number): number => 0 - value
const across = ([x, y, z]: readonly [number, number, number]): Triple => [x, y, flipped(z)]

function element(each: Element): Element {
  if (each.part !== "vbar") return each
  const { left, right, ...bar } = each
  return { ...bar, ...(right && { left: arm(right) }), ...(left && { right: arm(left) }) }
}
const arm = (each: Arm): Arm => ({ ...each, chain: each.chain.map((part) => element(part) as Arm["chain"][number]) })

/** The scene in a mirror that stands in the bow's own plane: right becomes left, everything else stays. */
export function mirrored(scene: Scene): Scene {
  const mounts = Object.entries(scene.mounts).map(([name, mount]) => [
    name,
    mount && { ...mount, atMm: across(mount.atMm), yawDeg: flipped(mount.yawDeg) },
  ])
  return {
    ...scene,
    bow: {
      ...scene.bow,
      hand: scene.bow.hand === "right" ? "left" : "right",
      riser: { ...scene.bow.riser, centreMm: across(scene.bow.riser.centreMm) },
    },
    accessories: scene.accessories.map((each) => ({ ...each, centreMm: across(each.centreMm) })),
    mounts: Object.fromEntries(mounts),
    rig: scene.rig.map((entry) => ({ ...entry, chain: entry.chain.map(element) })),
    pose: { ...scene.pose, cantDeg: flipped(scene.pose.cantDeg) },
  }
}
