import { useEffect, useRef, useState } from "react"
import { fileNameFor, saveFile } from "../files/saveFile"
import { useBench } from "../state/useBench"
import { files } from "../words/files"

const words = files.saveAs

/** Asks for a file's name and saves under it. Closing gives the focus back. */
export function SaveAs({ onClose }: { onClose(): void }) {
  const bench = useBench()
  const dialog = useRef<HTMLDialogElement>(null)
  const [name, setName] = useState(() => {
    const { fileName, scene } = bench.store.getState()
    return fileName ?? fileNameFor(scene.name)
  })
  useEffect(() => dialog.current?.showModal(), [])
  return (
    <dialog ref={dialog} className="bar-dialog" aria-label={words.title} onClose={onClose}>
      <form
        method="dialog"
        onSubmit={() => {
          void saveFile(bench, name)
        }}
      >
        <label>
          {words.name}
          <input value={name} onChange={(event) => setName(event.target.value)} maxLength={120} />
        </label>
        <p className="bar-dialog-actions">
          <button type="submit">{words.save}</button>
          <button type="button" onClick={() => dialog.current?.close()}>
            {words.cancel}
          </button>
        </p>
      </form>
    </dialog>
  )
}
