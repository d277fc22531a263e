import { useEffect, useState } from "react"
import { findSheet } from "../../words/findSheet"
import type { KitFiles } from "./KitSection"

const { box } = findSheet

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
  if (list === null) return <p className="find-note">{box.notFetched}</p>
  return (
    <select
      aria-label={box.shipped}
      value=""
      onChange={(event) => {
        if (event.target.value !== "") void files.openShipped(event.target.value)
      }}
    >
      <option value="">{box.shippedShort}</option>
      {list.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  )
}
