import { useEffect, useRef } from "react"
import { setPreferences, toggleOverlay } from "../commands/preferences"
import { overlays } from "../state/preferences"
import { useBench, useLive } from "../state/useBench"
import { type Language, languages } from "../words/language"
import { settings as words } from "../words/settings"
import { Check } from "./Check"
import { Choice } from "./Choice"
import { Handedness } from "./Handedness"
import "./settings.css"

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
        <h2 id="settings-title">{words.title}</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </div>
      <p className="settings-note">{words.note}</p>
      <Choice
        name={words.masses}
        value={preferences.massUnit}
        options={[
          ["g", words.grams],
          ["oz", words.ounces],
        ]}
        onChoose={(massUnit) => setPreferences.run(bench, { massUnit })}
      />
      <Choice
        name={words.lengths}
        value={preferences.lengthUnit}
        options={[
          ["mm", words.millimetres],
          ["in", words.inches],
        ]}
        onChoose={(lengthUnit) => setPreferences.run(bench, { lengthUnit })}
      />
      <Choice
        name={words.forces}
        value={preferences.forceUnit}
        options={[
          ["N", words.newtons],
          ["lbf", words.pounds],
        ]}
        onChoose={(forceUnit) => setPreferences.run(bench, { forceUnit })}
      />
      <Choice
        name={words.language}
        value={preferences.language}
        options={[["auto", words.auto], ...languageNames]}
        onChoose={(language) => setPreferences.run(bench, { language })}
      />
      <Choice
        name={words.theme}
        value={preferences.theme}
        options={[
          ["auto", words.auto],
          ["light", words.light],
          ["dark", words.dark],
        ]}
        onChoose={(theme) => setPreferences.run(bench, { theme })}
      />
      <Handedness />
      <fieldset className="checks">
        <legend>{words.shows}</legend>
        {overlays.map((overlay) => (
          <Check key={overlay} checked={preferences.show[overlay]} onSwitch={() => toggleOverlay.run(bench, overlay)}>
            {words.overlays[overlay]}
          </Check>
        ))}
      </fieldset>
      <fieldset className="checks">
        <legend>{words.arms}</legend>
        <Check
          checked={preferences.pairArms}
          onSwitch={() => setPreferences.run(bench, { pairArms: !preferences.pairArms })}
        >
          {words.pairArms}
        </Check>
      </fieldset>
    </dialog>
  )
}
