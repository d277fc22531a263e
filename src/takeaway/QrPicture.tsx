import { useMemo } from "react"
import { takeAway } from "../words/takeAway"
import { QUIET, qrCode } from "./link/qr"

/** A text as a code for a camera, always dark on light: readers know it no other way. */
export function QrPicture({ text }: { text: string }) {
  const code = useMemo(() => qrCode(text), [text])
  if (code === null) return <p className="qr-none">{takeAway.noCode}</p>
  const side = code.size + 2 * QUIET
  return (
    <svg
      className="qr"
      role="img"
      aria-label={takeAway.code}
      viewBox={`0 0 ${side} ${side}`}
      shapeRendering="crispEdges"
    >
      <rect width={side} height={side} fill="#fff" />
      <path d={code.path} fill="#000" transform={`translate(${QUIET} ${QUIET})`} />
    </svg>
  )
}
