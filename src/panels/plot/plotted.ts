/** A line of a plot. All lines share the plot's `x`; a gap is null. */
export interface PlotLine {
  /** Written at the line's end, so that lines are told apart without colour. Empty for a line alone. */
  readonly name: string
  readonly values: readonly (number | null)[]
  /** Dash lengths, CSS pixels; a whole line without. */
  readonly dash?: readonly number[]
  readonly width: number
  readonly ink: PlotInk
  /** The area down to zero is shaded. */
  readonly shaded?: boolean
}

/** The names of the theme's colours that plots draw with. */
export type PlotInk = "--ink" | "--ink-soft" | "--balance" | "--compared"

/** Something marked in a plot: a point, an upright line at one x, or a corner let down to both axes. */
export interface PlotMark {
  readonly kind: "point" | "upright" | "corner"
  readonly x: number
  /** Not for an upright line. */
  readonly y?: number
  readonly text: string
  /** A corner's text stands under its line, where a curve comes down to it. */
  readonly below?: boolean
}

export interface PlotAxis {
  /** With its unit. */
  readonly label: string
  /** The least and most that is always shown; data beyond it stretch the axis. */
  readonly span?: readonly [number, number]
  readonly decimals: number
}

/** What a plot can be given again at every frame. */
export interface PlotContent {
  readonly x: readonly number[]
  readonly lines: readonly PlotLine[]
  readonly marks: readonly PlotMark[]
}
