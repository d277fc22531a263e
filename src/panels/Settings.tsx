import { useEffect, useRef } from "react"
import { setPreferences, toggleOverlay } from "../commands/preferences"
import { type Overlay, overlays } from "../state/preferences"
import { useBench, useLive } from "../state/useBench"
import { type Language, languages } from "../words/language"
import { Check } from "./Check"
import { Choice } from "./Choice"
import { Handedness } from "./Handedness"
import "./settings.css"

const overlayWords: Readonly<Record<Overlay, string>> = {
  plumb: "Plumb line and moment arm",
  target: "Balance target",
  ellipsoid: "Inertia ellipsoid",
  arcs: "Pitch, roll and yaw arrows",
  fullDraw: "Balance of the drawn bow",
  ground: "Ground, and the hillside on a slope",
  labels: "Labels",
}

/** Each by its own name, so that it is found by who reads no other. */
const languageNames = Object.entries(languages) as [Language, string][]

/** Units, looks and what the picture shows. Everything takes effect at once; closing gives the focus back. */
export default function Settings({ onClose }: { onClose(): void }) {
  const bench = useBench()
  const dialog = useRef<HTMLDialogElement>(null)
  const preferences = useLive((state) => state.preferences)

  useEffect(() => {
    const before = document.activeElement
    dialog.current?.showModal()
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus()
    }
  }, [])

  return (
    <dialog ref={dialog} className="settings" aria-labelledby="settings-title" onClose={onClose}>
      <div className="settings-head">
        <h2 id="settings-title">Settings</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <p className="settings-note">Kept in this browser. Handedness belongs to the bow and is saved with it.</p>
      <Choice
        name="Masses"
        value={preferences.massUnit}
        options={[
          ["g", "grams"],
          ["oz", "ounces"],
        ]}
        onChoose={(massUnit) => setPreferences.run(bench, { massUnit })}
      />
      <Choice
        name="Lengths"
        value={preferences.lengthUnit}
        options={[
          ["mm", "millimetres"],
          ["in", "inches"],
        ]}
        onChoose={(lengthUnit) => setPreferences.run(bench, { lengthUnit })}
      />
      <Choice
        name="Forces"
        value={preferences.forceUnit}
        options={[
          ["N", "newtons"],
          ["lbf", "pounds"],
        ]}
        onChoose={(forceUnit) => setPreferences.run(bench, { forceUnit })}
      />
      <Choice
        name="Language"
        value={preferences.language}
        options={[["auto", "as the device"], ...languageNames]}
        onChoose={(language) => setPreferences.run(bench, { language })}
      />
      <Choice
        name="Look"
        value={preferences.theme}
        options={[
          ["auto", "as the device"],
          ["light", "light"],
          ["dark", "dark"],
        ]}
        onChoose={(theme) => setPreferences.run(bench, { theme })}
      />
      <Handedness />
      <fieldset className="checks">
        <legend>The picture shows</legend>
        {overlays.map((overlay) => (
          <Check key={overlay} checked={preferences.show[overlay]} onSwitch={() => toggleOverlay.run(bench, overlay)}>
            {overlayWords[overlay]}
          </Check>
        ))}
      </fieldset>
      <fieldset className="checks">
        <legend>V-bar arms</legend>
        <Check
          checked={preferences.pairArms}
          onSwitch={() => setPreferences.run(bench, { pairArms: !preferences.pairArms })}
        >
          Change both arms together
        </Check>
      </fieldset>
    </dialog>
  )
}
