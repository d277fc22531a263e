import { createContext, type RefObject, useContext, useLayoutEffect, useRef } from "react"
import { partNames } from "../../describe/partNames"
import type { Address } from "../../scene/address"
import type { Bench } from "../../state/bench"
import { rowGroups } from "./structure"

/** Where the keyboard goes on once the table has its new rows: a row's name, one of its buttons, a group's Add. */
export interface Wanted {
  readonly id: string
  readonly control: "name" | "up" | "down" | "add" | "rename"
}

export const WantedContext = createContext<RefObject<Wanted | null> | null>(null)

/** Asks for the focus after the next change of the table. */
export function useWanted(): (wanted: Wanted) => void {
  const wanted = useContext(WantedContext)
  return (next) => {
    if (wanted !== null) wanted.current = next
  }
}

/** Gives the focus where it was asked for, whenever one of `changes` is another. */
export function useGiveFocus(table: RefObject<HTMLElement | null>): RefObject<Wanted | null> {
  const wanted = useRef<Wanted | null>(null)
  useLayoutEffect(() => {
    if (wanted.current === null) return
    const { id, control } = wanted.current
    const found = table.current?.querySelector<HTMLElement>(
      `[data-row="${CSS.escape(id)}"] [data-control="${control}"]`,
    )
    if (found == null) return
    wanted.current = null
    found.focus()
  })
  return wanted
}

/** The path of what stands at an address now, or null. */
export function pathAt(bench: Bench, address: Address): string | null {
  const { scene } = bench.store.getState()
  const same = (other: Address) =>
    other.length === address.length && other.every((step, index) => step === address[index])
  for (const { rows } of rowGroups(scene)) {
    const row = rows.find((candidate) => same(candidate.address))
    if (row !== undefined) return row.path
  }
  return null
}

/** What a part is called now. */
export const nameOf = (bench: Bench, path: string): string =>
  partNames(bench.store.getState().scene).get(path)?.title ?? path
