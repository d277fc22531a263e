import { nudgeWords } from "../../describe/nudgeWords"
import { Choice } from "../../panels/Choice"
import { success } from "../../scene/errors"
import { nudgeFields } from "../../scene/nudge"
import { Amount } from "./Amount"
import { ask, useAsked } from "./asked"

const done = success(undefined)

/** What is done to the bows: how, which way and how much. `swinging`: there is a swing weight. */
export function Asking({ swinging }: { readonly swinging: boolean }) {
  const { kind, motion, impulse, push, lastingS } = useAsked()
  return (
    <section>
      <h2 className="sheet-heading">{nudgeWords.heading}</h2>
      <Choice
        name={nudgeWords.kind}
        value={kind}
        options={[
          ["knock", nudgeWords.kinds.knock],
          ["push", nudgeWords.kinds.push],
          ["drop", nudgeWords.kinds.drop],
        ]}
        onChoose={(chosen) => {
          ask({ kind: chosen })
          return done
        }}
      />
      {kind === "drop" ? (
        <p className="hills-note">{nudgeWords.dropNote}</p>
      ) : (
        <>
          <Choice
            name={nudgeWords.motion}
            value={motion}
            options={[
              ["pitch", nudgeWords.motions.pitch],
              ["yaw", nudgeWords.motions.yaw],
              ["roll", nudgeWords.motions.roll],
            ]}
            onChoose={(chosen) => {
              ask({ motion: chosen })
              return done
            }}
          />
          {kind === "knock" ? (
            <Amount
              label={nudgeWords.impulse}
              field={nudgeFields.impulse}
              value={impulse}
              onChange={(value) => ask({ impulse: value })}
            />
          ) : (
            <>
              <Amount
                label={nudgeWords.push}
                field={nudgeFields.push}
                value={push}
                onChange={(value) => ask({ push: value })}
              />
              <Amount
                label={nudgeWords.lasting}
                field={nudgeFields.lastingS}
                value={lastingS}
                onChange={(value) => ask({ lastingS: value })}
              />
            </>
          )}
          <p className="hills-note">
            {nudgeWords.positive[motion]} {nudgeWords.alike} {swinging && nudgeWords.swings}
          </p>
          <p className="hills-note">{nudgeWords.caution}</p>
        </>
      )}
    </section>
  )
}
