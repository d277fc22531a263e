import type { Span } from "../describe/balanceText"

const WIDTH = 132
const EDGE = 6
/** The target takes the middle third, so that a miss by its own width still shows how far it is. */
const BAND_FROM = WIDTH / 3
const BAND_TO = (2 * WIDTH) / 3

/**
 * Where a value lies to its target, as a picture for the eye only: the words beside it say the same. `spread` is how far
 * it may be off either way, drawn as a bar; infinite goes all the way.
 */
export function TargetGauge({ value, target, spread }: { value: number; target: Span; spread: number | undefined }) {
  const x = gaugePlace(value, target)
  return (
    <svg className="target-gauge" viewBox={`0 0 ${WIDTH} 18`} aria-hidden="true">
      <line x1={EDGE} x2={WIDTH - EDGE} y1="12" y2="12" stroke="var(--line-strong)" />
      <rect
        x={BAND_FROM}
        width={BAND_TO - BAND_FROM}
        y="8.5"
        height="7"
        fill="var(--balance-soft)"
        stroke="var(--ink-soft)"
      />
      {spread !== undefined && (
        <path
          className="gauge-spread"
          d={`M${gaugePlace(value - spread, target)} 12H${gaugePlace(value + spread, target)}`}
          stroke="var(--balance)"
          strokeWidth="3"
        />
      )}
      <path d="M-4.5 0H4.5L0 7Z" transform={`translate(${x} 1.5)`} fill="var(--balance)" />
      <line x1={x} x2={x} y1="8" y2="16" stroke="var(--balance)" strokeWidth="2" />
    </svg>
  )
}

/** Across the gauge in its own units, held at its ends. A target of a single value has its band one unit wide. */
export function gaugePlace(value: number, [from, to]: Span): number {
  const scale = (BAND_TO - BAND_FROM) / Math.max(to - from, 1)
  const place = WIDTH / 2 + (value - (from + to) / 2) * scale
  return Math.min(WIDTH - EDGE, Math.max(EDGE, Number(place.toFixed(1))))
}
