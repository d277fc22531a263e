import { useLayoutEffect, useMemo, useSyncExternalStore } from "react"
import type { PartKind } from "../scene/assemble"
import type { Evaluation } from "../scene/evaluate"
import { drawPart } from "./parts"
import { type Drawn, type Picture, usePicture } from "./picture"

/** All parts of the bow. Renders again only when a part comes, goes or becomes another kind; all else is done in place. */
export function Parts() {
  const picture = usePicture()
  const list = useMemo(() => partList(), [])
  const parts = useSyncExternalStore(picture.bench.store.subscribe, () =>
    list(picture.bench.store.getState().evaluation),
  )
  return parts.map(({ path, kind }) => <PartPicture key={`${kind} ${path}`} path={path} kind={kind} />)
}

interface Named {
  readonly path: string
  readonly kind: PartKind
}

/** Names and kinds of the parts; the same array for as long as they are the same. */
function partList(): (evaluation: Evaluation) => readonly Named[] {
  let last: readonly Named[] = []
  let of: Evaluation | null = null
  return (evaluation) => {
    if (evaluation === of) return last
    of = evaluation
    const { parts } = evaluation.now
    const same =
      parts.length === last.length &&
      parts.every(({ path, kind }, index) => path === last[index]!.path && kind === last[index]!.kind)
    if (!same) last = parts.map(({ path, kind }) => ({ path, kind }))
    return last
  }
}

function PartPicture({ path, kind }: Named) {
  const picture = usePicture()
  const drawing = useMemo(() => drawPart(kind, path, picture.looks), [kind, path, picture])
  useLayoutEffect(() => {
    const end = picture.watch((frame) => {
      const part = frame.parts.get(path)
      // A part just removed is still drawn until React has taken it out, before the next frame.
      if (part !== undefined) drawing.update(part, frame)
    })
    return () => {
      end()
      drawing.dispose?.()
    }
  }, [picture, drawing, path])
  return <primitive object={drawing.object} dispose={null} />
}

/** Anything else that is drawn from the state. */
export function Piece({ make }: { make: (picture: Picture) => Drawn }) {
  const picture = usePicture()
  const drawn = useMemo(() => make(picture), [make, picture])
  useLayoutEffect(() => {
    const end = picture.watch(drawn.update)
    return () => {
      end()
      drawn.dispose?.()
    }
  }, [picture, drawn])
  return <primitive object={drawn.object} dispose={null} />
}
