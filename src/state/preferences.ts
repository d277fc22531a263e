import type { LanguageChoice } from "../words/language"

/** How this person likes the bench; kept in the browser, never in a scene. */
export interface Preferences {
  readonly massUnit: "g" | "oz"
  readonly lengthUnit: "mm" | "in"
  readonly forceUnit: "N" | "lbf"
  readonly theme: "auto" | "light" | "dark"
  /** Another one is spoken once the page has loaded again. */
  readonly language: LanguageChoice
  /** Changing one arm of a V-bar changes the other to match. */
  readonly pairArms: boolean
  readonly show: Readonly<Record<Overlay, boolean>>
}

/** What can be switched on and off in the picture. */
export const overlays = ["plumb", "target", "ellipsoid", "arcs", "fullDraw", "ground", "labels"] as const
export type Overlay = (typeof overlays)[number]

export const defaultPreferences: Preferences = {
  massUnit: "g",
  lengthUnit: "mm",
  forceUnit: "N",
  theme: "auto",
  language: "auto",
  pairArms: true,
  show: { plumb: true, target: true, ellipsoid: false, arcs: true, fullDraw: true, ground: true, labels: true },
}

/** Where weights and lengths of everyday things are in ounces and inches. */
const IN_INCHES: readonly (string | undefined)[] = ["US", "LR", "MM"]

/** What somebody who has chosen nothing gets, in the units of their locale's region: `en-US`, `fr-CH`. */
export const preferencesIn = (locale: string): Preferences =>
  IN_INCHES.includes(new Intl.Locale(locale).region)
    ? { ...defaultPreferences, massUnit: "oz", lengthUnit: "in", forceUnit: "lbf" }
    : defaultPreferences
