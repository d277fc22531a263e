import { spoken } from "./language"

/** The page around what is on it: its regions for a screen reader, its tabs, the ways to look at the bow. */
export const page = spoken("page", {
  bow: "The bow",
  held: "How the bow is held",
  sheet: "Numbers and parts",
  tabList: "Sheet",
  /** The sheets. */
  tabs: {
    Balance: "Balance",
    Rig: "Rig",
    Bow: "Bow",
    Sliders: "Sliders",
    Draw: "Draw",
    Hills: "Hills",
    Find: "Find",
    Measure: "Measure",
    Nudge: "Nudge",
  },
  loading: "Loading…",
  /** While a file hangs over the page. */
  drop: "Drop the scene file to open it",
  lookFrom: "Look from",
  views: { side: "Side", top: "Top", archer: "Archer's eye", free: "Free", flat: "Flat drawing" },
  no3d: (reason: string) =>
    `This browser cannot draw in 3D (${reason}). The flat drawing shows the same bow; everything else works.`,
})
