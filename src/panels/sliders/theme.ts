/** As in the page's theme. */
const FONT = 'system-ui, "Segoe UI", Roboto, "Helvetica Neue", "Noto Sans", "DejaVu Sans", sans-serif'

/** leva in the page's own colours, which follow the light and the dark theme by themselves. */
export const levaTheme = {
  colors: {
    // The part of a track that is not filled; the panel itself is covered by the next.
    elevation1: "var(--line)",
    elevation2: "var(--panel)",
    elevation3: "var(--panel-sunk)",
    accent1: "var(--ink-soft)",
    accent2: "var(--ink-soft)",
    accent3: "var(--ink)",
    highlight1: "var(--line-strong)",
    highlight2: "var(--ink)",
    highlight3: "var(--ink)",
    vivid1: "var(--ink)",
    folderWidgetColor: "var(--ink)",
    folderTextColor: "var(--ink)",
    toolTipBackground: "var(--ink)",
    toolTipText: "var(--panel)",
  },
  radii: { xs: "4px", sm: "6px", lg: "6px" },
  space: { sm: "6px", md: "4px", rowGap: "6px", colGap: "8px" },
  // "inherit" would take leva's own: these are names of its variables, not properties.
  fonts: { mono: FONT, sans: FONT },
  fontSizes: { root: "13px" },
  fontWeights: { folder: "650" },
  sizes: {
    rootWidth: "100%",
    controlWidth: "150px",
    numberInputMinWidth: "60px",
    scrubberWidth: "12px",
    scrubberHeight: "24px",
    rowHeight: "32px",
    folderTitleHeight: "32px",
  },
}
