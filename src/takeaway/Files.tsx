import { useState } from "react"
import { numbersCsv } from "../describe/numbersCsv"
import { download, fileNameFor } from "../files/saveFile"
import { spreads } from "../state/spreads"
import { useBench } from "../state/useBench"
import { takeAway } from "../words/takeAway"

/** Picture, numbers and solids as files, made here and handed to the browser to keep. */
export function Files() {
  const bench = useBench()
  const [told, setTold] = useState<{ readonly text: string; readonly failed: boolean } | null>(null)
  const [busy, setBusy] = useState(false)

  const make = (ending: string, type: string, content: () => Promise<BlobPart>) => async () => {
    const name = fileNameFor(bench.store.getState().scene.name).replace(/\.json$/, ending)
    setBusy(true)
    try {
      download(name, await content(), type)
      setTold({ text: takeAway.made(name), failed: false })
    } catch (reason) {
      setTold({ text: takeAway.notMade(reason instanceof Error ? reason.message : String(reason)), failed: true })
    } finally {
      setBusy(false)
    }
  }
  const png = make(".png", "image/png", async () => {
    const { picturePng } = await import("./files/png")
    return picturePng(pictureCaption(bench.store.getState().scene.name))
  })
  const csv = make(".csv", "text/csv;charset=utf-8", async () => {
    const state = bench.store.getState()
    return numbersCsv(state.evaluation, spreads(state))
  })
  const glb = make(".glb", "model/gltf-binary", async () => {
    const { bowGlb } = await import("./files/glb")
    return bowGlb(bench.store.getState().evaluation, getComputedStyle(document.documentElement))
  })
  const buttons = [
    [takeAway.png, png],
    [takeAway.csv, csv],
    [takeAway.glb, glb],
  ] as const
  return (
    <section>
      <h3>{takeAway.files}</h3>
      <p>{takeAway.filesNote}</p>
      <p className="takeaway-actions">
        {buttons.map(([word, press]) => (
          <button key={word} type="button" aria-disabled={busy} onClick={() => void (busy || press())}>
            {word}
          </button>
        ))}
      </p>
      <p className="takeaway-told" role={told?.failed ? "alert" : "status"}>
        {told?.text}
      </p>
    </section>
  )
}

/** The page's name is the same in every language. */
const NAME = "Bow Balance Bench"

/** Under the picture: what it shows. */
const pictureCaption = (name: string): string => (name === "" ? NAME : `${name} · ${NAME}`)
