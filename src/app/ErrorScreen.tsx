import { Component, type ReactNode } from "react"
import { newBench } from "../commands/bench"
import { fileNameFor } from "../files/saveFile"
import { download } from "../files/saveFile"
import type { Bench } from "../state/bench"
import "./errorScreen.css"

interface Props {
  readonly bench: Bench
  readonly children: ReactNode
}

/** What is shown when the page itself fails: the work first, starting over last. */
export class ErrorScreen extends Component<Props, { failed: Error | null }> {
  override state: { failed: Error | null } = { failed: null }

  static getDerivedStateFromError(failed: Error) {
    return { failed }
  }

  override render() {
    const { failed } = this.state
    if (failed === null) return this.props.children
    const { bench } = this.props
    const { scene } = bench.store.getState()
    const details = `${failed.message}\n${failed.stack ?? ""}\n${navigator.userAgent}`
    return (
      <main className="error-screen" role="alert">
        <h1>The bench has stopped</h1>
        <p>Something in the page failed. Your setup “{scene.name}” is still here and is kept in this browser.</p>
        <p className="error-actions">
          <button type="button" onClick={() => location.reload()}>
            Reload
          </button>
          <button
            type="button"
            onClick={() => download(fileNameFor(scene.name), JSON.stringify(scene, null, 2), "application/json")}
          >
            Save the setup to a file
          </button>
          <button type="button" onClick={() => void navigator.clipboard?.writeText(details)}>
            Copy the details
          </button>
          <button
            type="button"
            onClick={() => {
              if (!confirm("Start with a new bow? Save the setup to a file first if you want to keep it.")) return
              newBench.run(bench)
              this.setState({ failed: null })
            }}
          >
            Start with a new bow
          </button>
        </p>
        <pre>{failed.message}</pre>
      </main>
    )
  }
}
