import { stepped } from "../describe/fieldText"
import type { Handle } from "../picture/handle"
import type { UnitChoice } from "../describe/format"
import type { Bench } from "../state/bench"
import { type Adjustment, beginAdjustment } from "./adjustment"
import { handleNamed } from "./current"
import { handleAt, type LayerView } from "./view"

const STEPS: Readonly<Record<string, { readonly by: number; readonly coarse?: true }>> = {
  ArrowUp: { by: 1 },
  ArrowRight: { by: 1 },
  ArrowDown: { by: -1 },
  ArrowLeft: { by: -1 },
  PageUp: { by: 1, coarse: true },
  PageDown: { by: -1, coarse: true },
}

/** Where a key takes a handle, in the file's unit; null for a key that does not move it. */
export function keyTarget(handle: Handle, key: string, shift: boolean, units: UnitChoice): number | null {
  const { field, value } = handle
  if (key === "Home") return field.min
  if (key === "End") return field.max
  const step = STEPS[key]
  return step === undefined ? null : stepped(value, field, units, step.by, shift || step.coarse === true)
}

/**
 * The keyboard on a focused handle: arrows, with Shift or as Page Up and Page Down in coarse steps, Home and End, Enter
 * to type a value. However long a key is held, and whatever others are pressed meanwhile, it is one undo step.
 */
export function listenForKeys(
  layer: HTMLElement,
  bench: Bench,
  view: LayerView,
  type: (key: string) => void,
): () => void {
  let held: Adjustment | null = null
  const down = new Set<string>()

  const end = (keep: boolean) => {
    const adjustment = held
    held = null
    down.clear()
    if (keep) adjustment?.keep()
    else adjustment?.giveUp()
    view.refresh()
  }

  const keydown = (event: KeyboardEvent) => {
    const at = handleAt(event)
    if (at === null || event.ctrlKey || event.metaKey || event.altKey || view.dragged !== null) return
    if (event.key === "Enter") {
      event.preventDefault()
      end(true)
      return type(at.key)
    }
    if (event.key === "Escape") {
      if (held === null) return
      event.preventDefault()
      event.stopPropagation()
      return end(false)
    }
    const state = bench.store.getState()
    const handle = handleNamed(state, at.key)
    const target = handle && keyTarget(handle, event.key, event.shiftKey, state.preferences)
    if (handle === undefined || target === null || target === undefined) return
    event.preventDefault()
    event.stopPropagation()
    if (held !== null && !held.live()) held = null
    held ??= beginAdjustment(bench, handle)
    down.add(event.key)
    view.byKey = at.key
    const reason = held.set(target)
    view.refused = reason === null ? null : { key: at.key, reason }
    view.refresh()
  }

  const keyup = (event: KeyboardEvent) => {
    if (!down.delete(event.key) || down.size > 0) return
    end(true)
  }

  const focus = (event: FocusEvent) => {
    const at = handleAt(event)
    view.focused = at?.key ?? null
    view.byKey = at?.element.matches(":focus-visible") ? at.key : null
    view.refresh()
  }
  const blur = () => {
    end(true)
    view.focused = null
    view.byKey = null
    view.refused = null
    view.refresh()
  }

  layer.addEventListener("keydown", keydown)
  layer.addEventListener("keyup", keyup)
  layer.addEventListener("focusin", focus)
  layer.addEventListener("focusout", blur)
  return () => {
    end(true)
    layer.removeEventListener("keydown", keydown)
    layer.removeEventListener("keyup", keyup)
    layer.removeEventListener("focusin", focus)
    layer.removeEventListener("focusout", blur)
  }
}
