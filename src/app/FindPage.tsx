import { useMemo } from "react"
import { fetchKit, shippedKits } from "../files/kitFile"
import { kitBench } from "../files/keptKit"
import { openKit, pickKit, saveKit } from "../files/openKit"
import { FindSheet } from "../panels/find/FindSheet"
import { useBench } from "../state/useBench"

/** The sheet that finds setups, with the page's one kit and search, and the kit's files. */
export default function FindPage() {
  const bench = useBench()
  const { box, finder, kept } = kitBench()
  const files = useMemo(
    () => ({
      pick: () => pickKit(bench),
      save: (as: "json" | "csv") => saveKit(bench, as),
      shipped: shippedKits,
      openShipped: async (id: string) => void openKit(bench, await fetchKit(id), id, null),
      kept,
    }),
    [bench, kept],
  )
  return <FindSheet box={box} finder={finder} files={files} />
}
