/** What the report and every saved table have their numbers in, whatever the page shows. */
export const reportUnits = { length: "mm", mass: "g", moment: "N·m", inertia: "kg·m²", newtons: "N" } as const
