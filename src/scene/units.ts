import type { Quantity } from "./fields"

/** The unit each quantity has in a scene file, as written after a number. */
export const fileUnit: Record<Quantity, string> = {
  mass: "g",
  length: "mm",
  angle: "°",
  force: "lbf",
  count: "",
  fraction: "",
  percent: "%",
  modulus: "GPa",
  stiffness: "N·m/rad",
  friction: "N·mm",
  damping: "N·m·s/rad",
  moment: "N·m",
  impulse: "N·m·s",
  inertia: "kg·m²",
  duration: "s",
}

/** `20 … 1500 mm`: a range as error messages and field hints state it. */
export function rangeText(min: number, max: number, quantity: Quantity): string {
  const unit = fileUnit[quantity]
  return `${min} … ${max}${unit === "" ? "" : ` ${unit}`}`
}
