import { newBench } from "../commands/setup"
import { download, fileNameFor } from "../files/saveFile"
import type { Bench } from "../state/bench"
import { stopped as words } from "../words/stopped"

interface Props {
  readonly bench: Bench
  readonly failed: Error
  /** Draws the page again, with what is on the bench by then. */
  onGoOn(): void
}

/** What a page that failed says and offers: the work first, starting over last. */
export function Stopped({ bench, failed, onGoOn }: Props) {
  const { scene } = bench.store.getState()
  const details = `${failed.message}\n${failed.stack ?? ""}\n${navigator.userAgent}`
  return (
    <>
      <h1>{words.title}</h1>
      <p>{words.kept(scene.name)}</p>
      <p className="error-actions">
        <button type="button" onClick={() => location.reload()}>
          {words.reload}
        </button>
        <button
          type="button"
          onClick={() => download(fileNameFor(scene.name), JSON.stringify(scene, null, 2), "application/json")}
        >
          {words.save}
        </button>
        <button type="button" onClick={() => void navigator.clipboard?.writeText(details)}>
          {words.copy}
        </button>
        <button
          type="button"
          onClick={() => {
            if (!confirm(words.sure)) return
            newBench.run(bench)
            onGoOn()
          }}
        >
          {words.startOver}
        </button>
      </p>
    </>
  )
}
