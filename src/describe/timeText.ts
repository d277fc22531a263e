/** "25 Nov 2026, 14:05" as the reader's own language writes it; `at` in milliseconds since 1970. */
export const timeText = (at: number): string =>
  new Date(at).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "short" })
