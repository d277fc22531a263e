import { LevaPanel, useControls, useCreateStore } from "leva"
import { useContext, useEffect } from "react"
import { setNumber } from "../../commands/numbers"
import { fieldText, fieldUnit } from "../../describe/fieldText"
import type { UnitChoice } from "../../describe/format"
import { slotTitle } from "../../describe/partNames"
import type { Result } from "../../scene/errors"
import { type Slot, slotNamed } from "../../scene/slots"
import { BenchContext, useBench } from "../../state/useBench"
import { plainDigits } from "../../words/numbers"
import type { SliderGesture } from "./gesture"
import type { Slider, SliderGroup } from "./groups"
import { levaTheme } from "./theme"

interface Change {
  readonly initial: boolean
  readonly fromPanel: boolean
}

interface Props {
  readonly group: SliderGroup
  /** Which of the sheet's groups this is. */
  readonly place: number
  readonly units: UnitChoice
  readonly gesture: SliderGesture
  /** Another number than before: the panel shows what the bench no longer holds. */
  readonly round: number
  told(result: Result<void>): void
}

/**
 * The leva panel of one group, which stays the same for its whole life. leva shows and reports; the bench owns every
 * value: what the panel reports is run as a command, and what the bench then holds is put back into the panel, once a
 * frame.
 */
export function LevaGroup({ group, place, units, gesture, round, told }: Props) {
  const bench = useBench()
  const frames = useContext(BenchContext)?.frames
  const store = useCreateStore()
  const { sliders } = group

  const report =
    (key: string) =>
    (value: number, _path: string, { initial, fromPanel }: Change) => {
      const { scene } = bench.store.getState()
      const slot = slotNamed(scene, key)
      if (initial || !fromPanel || slot === undefined) return
      // On blur leva reports the rounded text it shows; that is no change.
      if (Math.abs(value - shown(slot, units)) <= 0.5 * 10 ** -padOf(slot, units)) return
      const wanted = held(slot, value / fieldUnit(slot.field.quantity, units).factor)
      gesture.change(slotTitle(scene, slot), () => told(setNumber.run(bench, { key, value: wanted })))
    }

  const [, setControls] = useControls(
    () => {
      const { scene } = bench.store.getState()
      const controls = sliders.map((slider, index) => {
        const visits = { onEditStart: () => gesture.start("visit"), onEditEnd: () => gesture.end("visit") }
        const control = controlOf(slider, slotNamed(scene, slider.key), units)
        return [nameOf(place, index), { ...control, ...visits, onChange: report(slider.key) }] as const
      })
      return Object.fromEntries(controls)
    },
    { store },
    [group, place, units],
  )

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round puts every number anew.
  useEffect(() => {
    if (frames === undefined) return
    const last = new Map<string, number>()
    const put = () => {
      const { scene } = frames.latest()
      const changed: Record<string, number> = {}
      sliders.forEach(({ key }, index) => {
        const slot = slotNamed(scene, key)
        if (slot === undefined || last.get(key) === slot.value) return
        last.set(key, slot.value)
        changed[nameOf(place, index)] = shown(slot, units)
      })
      if (Object.keys(changed).length > 0) setControls(changed)
    }
    put()
    return frames.subscribe(put)
  }, [frames, sliders, place, setControls, units, round])

  return <LevaPanel store={store} fill flat titleBar={false} hideCopyButton theme={levaTheme} />
}

/**
 * A slider's name within leva, which makes it an id of the page. A slot's key would not do: a point in it parts folders.
 */
const nameOf = (place: number, index: number): string => `slider${place}-${index}`

/** What leva is told of a slider; a slot that is gone stands at nothing until the sheet is built anew. */
function controlOf({ key, label, from, to }: Slider, slot: Slot | undefined, units: UnitChoice) {
  if (slot === undefined) return { value: 0, label: key, min: from, max: to, step: 1, pad: 0 }
  const { unit, factor } = fieldUnit(slot.field.quantity, units)
  return {
    value: shown(slot, units),
    label: unit === "" ? label : `${label}, ${unit}`,
    min: from * factor,
    max: to * factor,
    step: Number((slot.field.step * factor).toPrecision(1)),
    pad: padOf(slot, units),
  }
}

/** A slot's value as a number of the shown unit. */
const shown = (slot: Slot, units: UnitChoice): number =>
  Number(plainDigits(fieldText(slot.value, slot.field.quantity, units)))

/** Digits behind the point in leva's own boxes. */
const padOf = (slot: Slot, units: UnitChoice): number => fieldUnit(slot.field.quantity, units).decimals

/** leva's limits are in the shown unit: back in the file's they may be a rounding past the field's own. */
const held = ({ field }: Slot, value: number): number => {
  const inside = Math.min(field.max, Math.max(field.min, value))
  return field.whole ? Math.round(inside) : Number(inside.toPrecision(12))
}
