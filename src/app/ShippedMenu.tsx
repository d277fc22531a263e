import { useEffect, useState } from "react"
import { openScene } from "../commands/bench"
import { fetchShipped, type ShippedScene, shippedScenes } from "../files/shipped"
import { useBench } from "../state/useBench"
import { files } from "../words/files"

/** As last fetched: the menu stands whole when it is opened again. */
let known: readonly ShippedScene[] = []

/** The scenes that come with the page, each to be opened; made anew whenever the menu is. */
export function ShippedMenu({ onChosen }: { onChosen(): void }) {
  const bench = useBench()
  const [scenes, setScenes] = useState<readonly ShippedScene[] | "failed">(known)
  useEffect(() => {
    if (known.length > 0) return
    shippedScenes().then(
      (list) => {
        known = list
        setScenes(list)
      },
      () => setScenes("failed"),
    )
  }, [])
  const choose = async (scene: ShippedScene) => {
    onChosen()
    const fetched = await fetchShipped(scene.id)
    const opened = fetched.ok ? openScene.run(bench, { scene: fetched.value, fileName: null, saved: true }) : fetched
    if (opened.ok) bench.say(files.opened(scene.name))
    else bench.setView({ notice: { tone: "problem", text: files.notOpened(scene.name), errors: opened.errors } })
  }
  return (
    <>
      <p>{files.examples}</p>
      {scenes === "failed" ? (
        <p role="alert">{files.listAway}</p>
      ) : (
        scenes.map((scene) => (
          <button key={scene.id} type="button" onClick={() => void choose(scene)}>
            {scene.name}
          </button>
        ))
      )}
    </>
  )
}
