import { spoken } from "./language"

/** What the menus call the scenes and kits that come with the page, by the names of their files. */
export const shipped = spoken("shipped", {
  scenes: {
    "barebow-riser-weights": "Barebow with riser weights",
    "beginner-one-rod": "First bow with one rod",
    "compound-front-and-back-bar": "Compound, front and back bar",
    "field-recurve-swinging-weights": "Field recurve with swinging weights",
    "short-hunting-rod": "Short rod for the woods",
    "target-recurve-68-inch": "68-inch target recurve, string on the limbs",
    "target-recurve-drooped-bar": "Target recurve, drooped V-bar",
    "target-recurve-measured": "Target recurve, measured at the bench",
    "target-recurve-straight-bar": "Target recurve, level V-bar",
  },
  "scenes/kits": {
    "barebow-pouch": "Barebow pouch",
    "target-club-box": "Target club box",
  },
})
