import { Choice } from "../../panels/Choice"
import { success } from "../../scene/errors"
import { nudgeFields } from "../../scene/nudge"
import { nudge } from "../../words/nudge"
import { Amount } from "./Amount"
import { ask, useAsked } from "./asked"

const done = success(undefined)

/** What is done to the bows: how, which way and how much. `swinging`: there is a swing weight. */
export function Asking({ swinging }: { readonly swinging: boolean }) {
  const { kind, motion, impulse, push, lastingS } = useAsked()
  return (
    <section>
      <h2 className="sheet-heading">{nudge.heading}</h2>
      <Choice
        name={nudge.kind}
        value={kind}
        options={[
          ["knock", nudge.kinds.knock],
          ["push", nudge.kinds.push],
          ["drop", nudge.kinds.drop],
        ]}
        onChoose={(chosen) => {
          ask({ kind: chosen })
          return done
        }}
      />
      {kind === "drop" ? (
        <p className="hills-note">{nudge.dropNote}</p>
      ) : (
        <>
          <Choice
            name={nudge.motion}
            value={motion}
            options={[
              ["pitch", nudge.motions.pitch],
              ["yaw", nudge.motions.yaw],
              ["roll", nudge.motions.roll],
            ]}
            onChoose={(chosen) => {
              ask({ motion: chosen })
              return done
            }}
          />
          {kind === "knock" ? (
            <Amount
              label={nudge.impulse}
              field={nudgeFields.impulse}
              value={impulse}
              onChange={(value) => ask({ impulse: value })}
            />
          ) : (
            <>
              <Amount
                label={nudge.push}
                field={nudgeFields.push}
                value={push}
                onChange={(value) => ask({ push: value })}
              />
              <Amount
                label={nudge.lasting}
                field={nudgeFields.lastingS}
                value={lastingS}
                onChange={(value) => ask({ lastingS: value })}
              />
            </>
          )}
          <p className="hills-note">
            {nudge.positive[motion]} {nudge.alike} {swinging && nudge.swings}
          </p>
          <p className="hills-note">{nudge.caution}</p>
        </>
      )}
    </section>
  )
}
