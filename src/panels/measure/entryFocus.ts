/** Gives the focus to one of the buttons of a list's entry; without such an entry it stays where it is. */
export function focusEntry(list: HTMLElement | null, place: number, control: "change" | "remove"): void {
  list?.children[place]?.querySelector<HTMLElement>(`[data-control="${control}"]`)?.focus()
}

/**
 * Where the keyboard goes on once an entry is removed, asked while its list still has it: to the entry that moves up, else
 * to the one before, and with the last of all to `otherwise`.
 */
export function focusAfterRemoval(list: HTMLElement | null, removed: number, otherwise: HTMLElement | null): void {
  const last = (list?.children.length ?? 0) - 1
  if (last <= 0) otherwise?.focus()
  else focusEntry(list, removed < last ? removed : last - 1, "remove")
}
