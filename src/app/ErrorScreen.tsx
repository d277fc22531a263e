import { Component, type ReactNode } from "react"
import type { Bench } from "../state/bench"
import "./errorScreen.css"
import { later } from "./later"
import type { Stopped } from "./Stopped"

interface Props {
  readonly bench: Bench
  readonly children: ReactNode
}

interface State {
  readonly failed: Error | null
  readonly offer: typeof Stopped | null
}

/**
 * What is shown when the page itself fails. Its words and buttons came with what is fetched beside the first view; where
 * that has not come, what went wrong stands alone, and the work is kept in the browser all the same.
 */
export class ErrorScreen extends Component<Props, State> {
  override state: State = { failed: null, offer: null }

  static getDerivedStateFromError(failed: Error) {
    return { failed }
  }

  override componentDidCatch() {
    later().then(
      ({ Stopped }) => this.setState({ offer: Stopped }),
      () => undefined,
    )
  }

  override render() {
    const { failed, offer: Offer } = this.state
    if (failed === null) return this.props.children
    return (
      <main className="error-screen" role="alert">
        {Offer !== null && (
          <Offer bench={this.props.bench} failed={failed} onGoOn={() => this.setState({ failed: null })} />
        )}
        <pre>{failed.message}</pre>
      </main>
    )
  }
}
