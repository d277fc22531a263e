import { spoken } from "./language"

/** What must be said beside the numbers, on the card and in the report. */
export const cautions = spoken("cautions", {
  /** `rod` is the path of a rod, the masses are in grams. */
  overloaded: (rod: string, load: string, rated: string) =>
    `${rod} carries ${load} g beyond it; its maker rates it for ${rated} g.`,
  rods: "A cracked or overloaded rod can fail: keep to its maker's rated end weight and inspect it before each session.",
  threads: "Recheck every thread after a change. Never release a drawn bow without an arrow.",
  pain: "Heavier is not safer: pain in shoulder or elbow means stop and see a professional.",
  coach: "A coach's and the range officer's word stands above any number here.",
})
