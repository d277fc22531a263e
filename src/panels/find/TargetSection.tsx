import { useId, useState } from "react"
import { bandProblem, limitWords, scoreWords } from "../../describe/findText"
import { type FindQuestion, type FindTarget, mountsWithSwings, type ScoreName, scoreNames } from "../../scene/find"
import { targetFields } from "../../scene/fields"
import { questionFields } from "../../scene/kit"
import { mountNames } from "../../scene/mountNames"
import type { MountName } from "../../scene/schema"
import { figures } from "../../state/derived"
import { useLive } from "../../state/useBench"
import { findSheet } from "../../words/findSheet"
import { Check } from "../Check"
import { Choice } from "../Choice"
import { useFieldProblem } from "../fieldProblems"
import { PlainNumber } from "../hills/PlainNumber"
import { Problem } from "../Problem"
import { OptionalNumber } from "./OptionalNumber"

const { wanted: words } = findSheet

interface Props {
  readonly question: FindQuestion
  /** Whether the coach has changed what the bow suggests. */
  readonly changed: boolean
  onChange(question: FindQuestion | null): void
}

const DONE = { ok: true, value: undefined } as const
const bands = ["forwardMm", "upMm", "sideMm", "netLiftNm"] as const
const caps = [
  ["massMaxG", targetFields.massMaxG, words.atMost],
  ["reachForwardMm", questionFields.reachForwardMm, words.atMost],
  ["reachSideMm", questionFields.reachSideMm, words.atMost],
  ["pitchLeast", questionFields.pitchLeast, words.atLeast],
  ["yawLeast", questionFields.yawLeast, words.atLeast],
  ["rollLeast", questionFields.rollLeast, words.atLeast],
] as const

/** What the setup must keep to, what may be built where, and what counts as best. */
export function TargetSection({ question, changed, onChange }: Props) {
  const { target } = question
  // Fields begun anew forget what was typed into them and could not be taken.
  const [round, setRound] = useState(0)
  const set = (more: Partial<FindQuestion>) => {
    onChange({ ...question, ...more })
    return DONE
  }
  const aim = (more: Partial<FindTarget>) => set({ target: { ...target, ...more } })
  return (
    <section aria-labelledby="find-target">
      <h2 className="sheet-heading" id="find-target">
        {words.heading}
      </h2>
      {changed ? (
        <div className="find-buttons">
          <button
            type="button"
            onClick={() => {
              setRound(round + 1)
              onChange(null)
            }}
          >
            {words.back}
          </button>
        </div>
      ) : (
        <p className="find-note">{words.own}</p>
      )}
      {bands.map((key) => (
        <BandField key={`${key} ${round}`} of={key} band={target[key]} onChange={(band) => aim({ [key]: band })} />
      ))}
      <Cap key={`${caps[0][0]} ${round}`} of={caps[0]} target={target} onChange={aim} />
      <label className="find-name find-wide">
        <span>{words.best}</span>
        <select value={question.score} onChange={(event) => set({ score: event.target.value as ScoreName })}>
          {scoreNames.map((name) => (
            <option key={name} value={name}>
              {scoreWords[name]}
            </option>
          ))}
        </select>
      </label>
      <details className="find-more">
        <summary>{words.more}</summary>
        {caps.slice(1).map((cap) => (
          <Cap key={`${cap[0]} ${round}`} of={cap} target={target} onChange={aim} />
        ))}
        <p className="find-note">{words.note}</p>
        <Choice
          name={words.hold}
          value={question.hold}
          options={[
            ["brace", words.brace],
            ["drawn", words.drawn],
          ]}
          onChoose={(hold) => set({ hold })}
        />
        <Choice
          name={words.arms}
          value={question.arms}
          options={[
            ["alike", words.alike],
            ["free", words.free],
          ]}
          onChoose={(arms) => set({ arms })}
        />
        <Mounts question={question} onChange={set} />
        <PlainNumber
          key={`mostDiscs-${round}`}
          label={questionFields.mostDiscs.label}
          field={questionFields.mostDiscs}
          value={question.mostDiscs}
          onChange={(mostDiscs) => set({ mostDiscs })}
        />
        <Choice
          name={words.variety}
          value={question.variety}
          options={[
            ["pieces", words.bestAngles],
            ["each", words.everySetting],
          ]}
          onChoose={(variety) => set({ variety })}
        />
        <PlainNumber
          key={`count-${round}`}
          label={questionFields.count.label}
          field={questionFields.count}
          value={question.count}
          onChange={(count) => set({ count })}
        />
      </details>
    </section>
  )
}

type BandKey = (typeof bands)[number]
type Band = [number, number]

function BandField({ of: key, band, onChange }: { of: BandKey; band: Band | undefined; onChange(band?: Band): void }) {
  const field = targetFields[key]
  const now = useLive((state) => {
    const { centreMm, fullDraw } = figures(state)
    return key === "netLiftNm" ? fullDraw.netLiftNm : centreMm[bands.indexOf(key)]!
  })
  // Switched on, a band stands around where the bow is now.
  const start = (): Band => {
    const half = field.quantity === "length" ? 10 : 0.5
    const middle = field.quantity === "length" ? Math.round(now) : Number(now.toFixed(1))
    return [middle - half, middle + half]
  }
  const { name } = limitWords[key]
  const units = useLive(({ preferences }) => preferences)
  const id = useId()
  const reversed = band === undefined ? null : bandProblem(key, band, units)
  useFieldProblem(id, name, reversed !== null)
  const wrongBecause = reversed === null ? undefined : id
  const shared = { field, wrongBecause }
  return (
    <fieldset className="find-optional">
      <legend>
        <Check
          checked={band !== undefined}
          onSwitch={() => {
            onChange(band === undefined ? start() : undefined)
            return DONE
          }}
        >
          {name.charAt(0).toUpperCase() + name.slice(1)}
        </Check>
      </legend>
      {band !== undefined && (
        <div className="find-band">
          <PlainNumber
            {...shared}
            label={words.from}
            name={words.fromOf(name)}
            value={band[0]}
            onChange={(from) => onChange([from, band[1]])}
          />
          <PlainNumber
            {...shared}
            label={words.to}
            name={words.toOf(name)}
            value={band[1]}
            onChange={(to) => onChange([band[0], to])}
          />
          <Problem text={reversed} id={id} />
        </div>
      )}
    </fieldset>
  )
}

function Cap({
  of: [key, field, inner],
  target,
  onChange,
}: {
  of: (typeof caps)[number]
  target: FindTarget
  onChange(more: Partial<FindTarget>): void
}) {
  const now = useLive((state) => {
    const { massG, inertiaGrip } = figures(state)
    const diagonal = { pitchLeast: 2, yawLeast: 1, rollLeast: 0 } as const
    if (key === "massMaxG") return Math.ceil(massG / 10) * 10
    if (key === "reachForwardMm") return 900
    if (key === "reachSideMm") return 350
    return Number(inertiaGrip[diagonal[key]][diagonal[key]].toFixed(2))
  })
  return (
    <OptionalNumber
      field={field}
      label={limitWords[key].name}
      inner={inner}
      value={target[key]}
      start={now}
      onChange={(value) => onChange({ [key]: value })}
    />
  )
}

function Mounts({ question, onChange }: { question: FindQuestion; onChange(more: Partial<FindQuestion>): unknown }) {
  const scene = useLive((state) => state.scene)
  const swinging = mountsWithSwings(scene)
  const present = mountNames.filter((mount) => scene.mounts[mount] !== undefined)
  const { mounts, vbarMount, always } = question
  const toggle = (mount: MountName) => {
    const next = mounts.includes(mount) ? mounts.filter((each) => each !== mount) : [...mounts, mount]
    onChange({
      mounts: mountNames.filter((each) => next.includes(each)),
      vbarMount: vbarMount !== null && next.includes(vbarMount) ? vbarMount : null,
    })
    return DONE
  }
  return (
    <fieldset className="checks">
      <legend>{words.mounts}</legend>
      {present.map((mount) =>
        swinging.includes(mount) ? (
          <p key={mount} className="find-note">
            {words.swings[mount]}
          </p>
        ) : (
          <Check key={mount} checked={mounts.includes(mount)} onSwitch={() => toggle(mount)}>
            {words.mount[mount]}
          </Check>
        ),
      )}
      <label className="find-name">
        <span>{words.vbarOn}</span>
        <select
          value={vbarMount ?? "none"}
          onChange={(event) => {
            const value = event.target.value
            onChange({ vbarMount: value === "none" ? null : (value as MountName) })
          }}
        >
          <option value="none">{words.noMount}</option>
          {mounts.map((mount) => (
            <option key={mount} value={mount}>
              {words.onMount[mount]}
            </option>
          ))}
        </select>
      </label>
      <Check
        checked={always.vbar}
        onSwitch={() => {
          onChange({ always: { ...always, vbar: !always.vbar } })
          return DONE
        }}
      >
        {words.mustVbar}
      </Check>
      <Check
        checked={always.frontRod}
        onSwitch={() => {
          onChange({ always: { ...always, frontRod: !always.frontRod } })
          return DONE
        }}
      >
        {words.mustFrontRod}
      </Check>
    </fieldset>
  )
}
