import { useLive } from "../state/useBench"
import { slotsOf } from "../scene/slots"
import { NumberField } from "./NumberField"

const SEPARATOR = "\n"

/** A field for every number that belongs to `owner`, a part path or a slot owner. */
export function OwnedFields({ owner }: { owner: string }) {
  const names = useLive(({ scene }) =>
    slotsOf(scene)
      .filter((slot) => slot.owner === owner)
      .map(({ key }) => key.slice(owner.length + 1))
      .join(SEPARATOR),
  )
  if (names === "") return null
  // Keyed by name alone: when an accessory is renamed its fields stay where the keyboard is.
  return names.split(SEPARATOR).map((name) => <NumberField key={name} of={`${owner}:${name}`} />)
}
