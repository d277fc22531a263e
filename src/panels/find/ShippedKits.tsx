import { useEffect, useState } from "react"
import type { KitFiles } from "./KitSection"

type List = Awaited<ReturnType<KitFiles["shipped"]>>

/** The kits that come with the bench, as a choice that opens one. */
export function ShippedKits({ files }: { files: KitFiles }) {
  const [list, setList] = useState<List | null>([])
  useEffect(() => {
    let gone = false
    files.shipped().then(
      (found) => !gone && setList(found),
      () => !gone && setList(null),
    )
    return () => {
      gone = true
    }
  }, [files])
  if (list === null) return <p className="find-note">The invented kits could not be fetched.</p>
  return (
    <select
      aria-label="Open an invented kit"
      value=""
      onChange={(event) => {
        if (event.target.value !== "") void files.openShipped(event.target.value)
      }}
    >
      <option value="">Invented kits…</option>
      {list.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  )
}
