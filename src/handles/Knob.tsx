import type { HandleKind } from "../picture/handle"

/**
 * The face of a knob; shapes that differ without colour. Drawn for a movement to the right; the layer turns it to where
 * the value grows in the picture.
 */
export function KnobFace({ kind }: { kind: HandleKind }) {
  return (
    <svg className="knob-face" viewBox="-12 -12 24 24" aria-hidden="true">
      {faces[kind]}
    </svg>
  )
}

const faces: Readonly<Record<HandleKind, React.ReactNode>> = {
  length: (
    <>
      <rect className="knob-plate" x="-11" y="-6.5" width="22" height="13" rx="6.5" />
      <rect className="knob-body" x="-1.3" y="-4" width="2.6" height="8" rx="1.3" />
      <path className="knob-mark" d="M-4.5-3-7.5 0l3 3M4.5-3 7.5 0l-3 3" />
    </>
  ),
  angle: (
    <>
      <circle className="knob-plate" r="9" />
      <circle className="knob-mark" r="4" />
      <path className="knob-mark" d="M0-9v5M0 9v-5" />
    </>
  ),
  count: (
    <>
      <rect className="knob-plate" x="-9" y="-9" width="18" height="18" rx="3" />
      <path className="knob-disc" d="M-4.8-5.5v11M0-5.5v11M4.8-5.5v11" />
    </>
  ),
  draw: (
    <>
      <rect className="knob-plate" x="-11.5" y="-7.5" width="23" height="15" rx="7.5" />
      <path className="knob-mark" d="M1.5-4.5-1.5 0l3 4.5M-4.5-3-7.5 0l3 3M4.5-3 7.5 0l-3 3" />
    </>
  ),
  place: (
    <>
      <rect className="knob-plate" x="-7.5" y="-7.5" width="15" height="15" rx="2" transform="rotate(45)" />
      <path className="knob-mark" d="M-5 0H5M0-5V5" />
    </>
  ),
}

export function SwitchFace({ present }: { present: boolean }) {
  return (
    <svg className="knob-face" viewBox="-12 -12 24 24" aria-hidden="true">
      <circle className="knob-ground" r="7" />
      <path className="knob-sign" d={present ? "M-3.5 0h7" : "M-3.5 0h7M0-3.5v7"} />
    </svg>
  )
}
