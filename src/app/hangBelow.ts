import type { MouseEvent } from "react"

/** Has a menu open below the button that was pressed, in whichever row of the bar that stands. */
export function hangBelow({ currentTarget }: MouseEvent<HTMLElement>, menu: HTMLElement | null): void {
  menu?.style.setProperty("--below", `${Math.round(currentTarget.getBoundingClientRect().bottom) + 4}px`)
}
