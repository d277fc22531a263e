/**
 * A table drawn as a CSS grid loses its meaning in some browsers; said once more as roles it keeps it. To be spread on
 * the elements whose roles they are anyway.
 */
export const roles = {
  table: { role: "table" },
  group: { role: "rowgroup" },
  row: { role: "row" },
  cell: { role: "cell" },
  columnHead: { role: "columnheader" },
  rowHead: { role: "rowheader" },
} as const
