import { folder, LevaPanel, useControls, useCreateStore } from "leva"
import { useContext, useEffect, useMemo, useRef, useState } from "react"
import { setNumber } from "../../commands/numbers"
import { fieldText, fieldUnit } from "../../describe/fieldText"
import type { UnitChoice } from "../../describe/format"
import { slotTitle } from "../../describe/partNames"
import { problemText } from "../../describe/problemText"
import { type Slot, slotNamed } from "../../scene/slots"
import { BenchContext, useBench } from "../../state/useBench"
import { Problem } from "../Problem"
import type { SliderGroup } from "./groups"
import { levaTheme } from "./theme"

/** In leva's paths a point parts folders, so a slider's name there is its number in the list. */
interface Named {
  readonly name: string
  readonly key: string
}

interface Change {
  readonly initial: boolean
  readonly fromPanel: boolean
}

/**
 * The leva panel for `groups`, which stay the same for its whole life. leva shows and reports; the bench owns every
 * value: what the panel reports is run as a command, and what the bench then holds is put back into the panel, once a
 * frame.
 */
export function LevaSliders({ groups, units }: { groups: readonly SliderGroup[]; units: UnitChoice }) {
  const bench = useBench()
  const frames = useContext(BenchContext)?.frames
  const store = useCreateStore()
  const [problem, setProblem] = useState<string | null>(null)
  const wrapper = useGestures(bench.begin, bench.commit)
  const named = useMemo(() => nameAll(groups), [groups])

  const report =
    (key: string) =>
    (value: number, _path: string, { initial, fromPanel }: Change) => {
      const { scene } = bench.store.getState()
      const slot = slotNamed(scene, key)
      if (initial || !fromPanel || slot === undefined) return
      // On blur leva reports the rounded text it shows; that is no change.
      if (Math.abs(value - shown(slot, units)) <= 0.5 * 10 ** -padOf(slot, units)) return
      const result = setNumber.run(bench, {
        key,
        value: held(slot, value / fieldUnit(slot.field.quantity, units).factor),
      })
      setProblem(result.ok ? null : problemText(bench.store.getState(), result.errors))
    }

  const [, setFolders] = useControls(
    () => {
      const { scene } = bench.store.getState()
      const entries = groups.map(({ title, sliders }, group) => {
        const controls = sliders.map(({ key, label, from, to }, index) => {
          const slot = slotNamed(scene, key)
          const { unit, factor } = slot === undefined ? { unit: "", factor: 1 } : fieldUnit(slot.field.quantity, units)
          const words = slot === undefined ? key : slotTitle(scene, slot)
          const control = {
            value: slot === undefined ? 0 : shown(slot, units),
            label: unit === "" ? label : `${label}, ${unit}`,
            min: from * factor,
            max: to * factor,
            step: stepOf(slot, factor),
            pad: slot === undefined ? 0 : padOf(slot, units),
            onChange: report(key),
            onEditStart: () => bench.begin(words),
            onEditEnd: () => bench.commit(),
          }
          return [nameOf(group, index), control] as const
        })
        return [title, folder(Object.fromEntries(controls))] as const
      })
      return Object.fromEntries(entries)
    },
    { store },
    [groups, units],
  )

  useEffect(() => {
    if (frames === undefined) return
    // leva's types know the folders but not the numbers in them, which it takes by their own names.
    const set = setFolders as unknown as (values: Readonly<Record<string, number>>) => void
    const last = new Map<string, number>()
    const put = () => {
      const { scene } = frames.latest()
      const changed: Record<string, number> = {}
      for (const { name, key } of named) {
        const slot = slotNamed(scene, key)
        if (slot === undefined || last.get(key) === slot.value) continue
        last.set(key, slot.value)
        changed[name] = shown(slot, units)
      }
      if (Object.keys(changed).length > 0) set(changed)
    }
    return frames.subscribe(put)
  }, [frames, named, setFolders, units])

  return (
    <div ref={wrapper}>
      <Problem text={problem} />
      <LevaPanel store={store} fill flat titleBar={false} hideCopyButton theme={levaTheme} />
    </div>
  )
}

/** Sliders are dragged without leva saying when that begins and ends: a press anywhere in the panel is one step. */
function useGestures(begin: (label: string) => void, commit: () => void) {
  const ref = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const panel = ref.current
    if (panel === null) return
    let open = false
    const start = (event: PointerEvent) => {
      // A press into a text box is leva's own edit.
      if (event.target instanceof HTMLInputElement) return
      open = true
      begin("sliders")
    }
    const end = () => {
      if (!open) return
      open = false
      commit()
    }
    panel.addEventListener("pointerdown", start, true)
    window.addEventListener("pointerup", end)
    window.addEventListener("pointercancel", end)
    return () => {
      panel.removeEventListener("pointerdown", start, true)
      window.removeEventListener("pointerup", end)
      window.removeEventListener("pointercancel", end)
      end()
    }
  }, [begin, commit])
  return ref
}

const nameOf = (group: number, index: number): string => `n${group}_${index}`

const nameAll = (groups: readonly SliderGroup[]): Named[] =>
  groups.flatMap(({ sliders }, group) => sliders.map(({ key }, index) => ({ name: nameOf(group, index), key })))

/** A slot's value as a number of the shown unit. */
const shown = (slot: Slot, units: UnitChoice): number => Number(fieldText(slot.value, slot.field.quantity, units))

/** Digits behind the point in leva's own boxes. */
const padOf = (slot: Slot, units: UnitChoice): number => fieldUnit(slot.field.quantity, units).decimals

/** leva's limits are in the shown unit: back in the file's they may be a rounding past the field's own. */
const held = ({ field }: Slot, value: number): number => {
  const inside = Math.min(field.max, Math.max(field.min, value))
  return field.whole ? Math.round(inside) : Number(inside.toPrecision(12))
}

const stepOf = (slot: Slot | undefined, factor: number): number =>
  slot === undefined ? 1 : Number((slot.field.step * factor).toPrecision(1))
