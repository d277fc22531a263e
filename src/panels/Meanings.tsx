import { meanings } from "../describe/meanings"
import { type ReadoutKey, readouts } from "../describe/readouts"

/** What each of these numbers is. Fetched apart from the sheet that has it behind a press. */
export default function Meanings({ keys }: { readonly keys: readonly ReadoutKey[] }) {
  return (
    <dl>
      {keys.map((key) => (
        <div key={key}>
          <dt>{readouts[key].label}</dt>
          <dd>{meanings[key]}</dd>
        </div>
      ))}
    </dl>
  )
}
