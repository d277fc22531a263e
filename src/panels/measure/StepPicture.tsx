import type { ReactNode } from "react"
import type { Measurement } from "../../scene/schema"
import { readingSteps } from "../../words/readingSteps"

const { picture: words } = readingSteps

/** How each reading is taken, as a line drawing. The bow's front is to the right. */
export function StepPicture({ kind }: { kind: Measurement["kind"] }) {
  return (
    <svg className="step-picture" viewBox="0 0 320 176" role="img" aria-label={words[kind]}>
      {drawings[kind]}
    </svg>
  )
}

/** The bow about its grip, 150 high: string, limbs, riser, front rod. */
const bow = (
  <>
    <path className="step-string" d="M-24-72V72" />
    <path className="step-limb" d="M-24-72C-16-66-16-58-8-50C0-42 1-36 0-28M-24 72C-16 66-16 58-8 50C0 42 1 36 0 28" />
    <path className="step-riser" d="M0-29C3-18-3-10 1-4C-2 6 3 16 0 29" />
    <path className="step-rod" d="M1 10H82M76 6V14" />
  </>
)

const cord = (path: string) => <path className="step-cord" d={path} />
const beam = <path className="step-beam" d="M70 8H250" />
const arrows = (d: string) => (
  <path className="step-arrow" d={d} markerStart="url(#step-tip)" markerEnd="url(#step-tip)" />
)

const tip = (
  <defs>
    <marker
      id="step-tip"
      viewBox="0 0 8 8"
      refX="6"
      refY="4"
      markerWidth="7"
      markerHeight="7"
      orient="auto-start-reverse"
    >
      <path d="M0 0 8 4 0 8Z" />
    </marker>
  </defs>
)

/**
 * Hung by the riser's upper end, and turned so far that the balance point, 15 ahead of the grip and 5 below, is straight
 * below the hook: atan(15/34). Swung on by `degrees`.
 */
const hung = (degrees: number): string => `translate(160 66) rotate(${23.8 + degrees}) translate(0 29)`

const word = (x: number, y: number, text: string, anchor: "start" | "middle" | "end" = "start") => (
  <text x={x} y={y} textAnchor={anchor}>
    {text}
  </text>
)

const drawings: Readonly<Record<Measurement["kind"], ReactNode>> = {
  scale: (
    <>
      <rect className="step-tool" x="112" y="46" width="84" height="96" rx="8" />
      <rect className="step-tool" x="134" y="122" width="40" height="13" rx="2" />
      <circle className="step-tool" cx="154" cy="84" r="28" />
      <g transform="translate(148 86)">{bow}</g>
      {word(104, 24, words.limbsFree, "end")}
      {word(110, 98, words.stringFree, "end")}
      {word(240, 84, words.rodFree)}
      {word(204, 62, words.tin)}
      {word(204, 138, words.zeroed)}
    </>
  ),
  hang: (
    <>
      {beam}
      <path className="step-tool" d="M76 170C76 160 234 160 234 170Z" />
      {cord("M160 8V66")}
      <g transform={hung(0)}>{bow}</g>
      <path className="step-plumb" d="M160 66V150" />
      <circle className="step-balance" cx="160" cy="103" r="5" />
      <circle className="step-hook" cx="160" cy="66" r="3.5" />
      {word(172, 40, words.onePoint)}
      {word(178, 84, words.balancePoint)}
      {word(178, 98, words.below)}
    </>
  ),
  swing: (
    <>
      {tip}
      {beam}
      <g transform={hung(-10)} opacity="0.3">
        {bow}
      </g>
      <g transform={hung(10)} opacity="0.3">
        {bow}
      </g>
      <g transform={hung(0)}>{bow}</g>
      {cord("M154 8V60M166 8V60M150 66H170")}
      <circle className="step-hook" cx="160" cy="66" r="3.5" />
      {arrows("M84 152Q112 172 148 171")}
      {word(314, 40, words.edge, "end")}
      {word(314, 54, words.asAxis, "end")}
      {word(314, 158, words.swings, "end")}
      {word(314, 171, words.eachWay, "end")}
    </>
  ),
  twist: (
    <>
      {tip}
      {beam}
      {cord("M112 8V104M208 8V104")}
      <g transform="translate(160 104) scale(1 0.45) rotate(90)">{bow}</g>
      <path className="step-plumb" d="M160 24V150" />
      <circle className="step-balance" cx="160" cy="106" r="5" />
      {arrows("M136 70A26 8 0 0 0 184 70")}
      {word(216, 50, words.cords)}
      {word(160, 168, words.equallyFar, "middle")}
    </>
  ),
}
