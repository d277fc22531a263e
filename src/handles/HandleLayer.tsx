import { useLayoutEffect, useRef, useState } from "react"
import type { Projector } from "../picture/projector"
import { soon } from "../state/frame"
import { useBench, useLive } from "../state/useBench"
import { knobs as words } from "../words/knobs"
import { holds } from "./current"
import { listenForDrags } from "./dragging"
import { pressSwitch } from "./extender"
import "./handles.css"
import { KnobFace, SwitchFace } from "./Knob"
import { listenForKeys } from "./keys"
import { createArranger } from "./layout"
import { switchId } from "./places"
import { TypedValue } from "./TypedValue"
import { handleAt, type LayerView } from "./view"

/**
 * The handles of the picture as real, focusable sliders laid over it. React makes their elements, and again only when
 * parts come or go; where they are and what they say is written straight to them, once a frame at the most.
 * `projector` is the picture's own; nothing is shown until there is one. The layer fills its positioned parent, which
 * must be the picture's box.
 */
export default function HandleLayer({ projector }: { projector: Projector | null }) {
  const bench = useBench()
  const shape = useLive((state) => holds(state).shape)
  const layer = useRef<HTMLFieldSetElement>(null)
  const renew = useRef((_typing: string | null) => {})
  const [typing, setTyping] = useState<string | null>(null)

  useLayoutEffect(() => {
    const element = layer.current
    if (element === null || projector === null) return
    const arranger = createArranger(element)
    let waiting = false
    const view: LayerView = {
      dragged: null,
      hovered: null,
      focused: null,
      byKey: null,
      typing: null,
      refused: null,
      refresh() {
        if (waiting) return
        waiting = true
        soon(() => {
          waiting = false
          if (element.isConnected) arranger.arrange(bench.store.getState(), projector, view)
        })
      },
    }
    renew.current = (typing) => {
      view.typing = typing
      arranger.renew()
      arranger.arrange(bench.store.getState(), projector, view)
    }
    const point = (event: PointerEvent) => {
      const key = event.type === "pointerover" && event.pointerType === "mouse" ? (handleAt(event)?.key ?? null) : null
      if (key === view.hovered) return
      view.hovered = key
      view.refresh()
    }
    const open = (event: MouseEvent) => {
      const at = handleAt(event)
      if (at !== null) setTyping(at.key)
    }
    element.addEventListener("pointerover", point)
    element.addEventListener("pointerout", point)
    element.addEventListener("dblclick", open)
    const resized = new ResizeObserver(() => {
      arranger.resize({ width: element.clientWidth, height: element.clientHeight })
      view.refresh()
    })
    resized.observe(element)
    const ends = [
      listenForDrags(element, bench, projector, view),
      listenForKeys(element, bench, view, setTyping),
      bench.store.subscribe(view.refresh),
      projector.subscribe(view.refresh),
      () => resized.disconnect(),
      () => element.removeEventListener("pointerover", point),
      () => element.removeEventListener("pointerout", point),
      () => element.removeEventListener("dblclick", open),
    ]
    return () => {
      for (const end of ends) end()
    }
  }, [bench, projector])

  // New elements have no place and no value yet: they get both before they are painted.
  // biome-ignore lint/correctness/useExhaustiveDependencies: which elements there are follows from the shape
  useLayoutEffect(() => renew.current(typing), [shape, projector, typing])

  const { handles, switches } = holds(bench.store.getState())
  const close = () => {
    const knob = [...(layer.current?.querySelectorAll<HTMLElement>("[data-handle]") ?? [])]
    knob.find((candidate) => candidate.dataset.handle === typing)?.focus({ preventScroll: true })
    setTyping(null)
  }

  return (
    <fieldset ref={layer} className="handles" hidden={projector === null}>
      <legend className="visually-hidden">{words.label}</legend>
      <svg className="handle-leaders" aria-hidden="true">
        {[...handles.map(({ key }) => key), ...switches.map(({ path }) => switchId(path))].map((id) => (
          <g key={id} data-leader={id} visibility="hidden">
            <line />
            <circle r="2" />
          </g>
        ))}
      </svg>
      {handles.map(({ key, kind, label, field, value }) => (
        <div
          key={key}
          className={`handle handle-${kind}`}
          role="slider"
          tabIndex={0}
          data-handle={key}
          data-knob={key}
          aria-label={label}
          aria-valuemin={field.min}
          aria-valuemax={field.max}
          aria-valuenow={value}
        >
          <KnobFace kind={kind} />
        </div>
      ))}
      {switches.map((item) => (
        <button
          key={item.path}
          type="button"
          className="handle handle-switch"
          data-knob={switchId(item.path)}
          data-extender={item.path}
          aria-label={item.label}
          title={item.label}
          onPointerDown={(event) => event.stopPropagation()}
          onClick={() => pressSwitch(bench, item)}
        >
          <SwitchFace present={item.present} />
        </button>
      ))}
      {typing !== null && <TypedValue key={typing} handleKey={typing} onClose={close} />}
      <div className="handle-tip" aria-hidden="true" hidden>
        <span className="handle-tip-name" />
        <span className="handle-tip-value" />
        <span className="handle-tip-effect" />
        <span className="handle-tip-reason" />
      </div>
    </fieldset>
  )
}
