import type { ReactNode } from "react"
import { BowKind, StringWrap } from "./bow/BowKind"
import "./bow/bow.css"
import { Mounts } from "./bow/Mounts"
import { TargetFields } from "./bow/TargetFields"
import { Words } from "./bow/Words"
import { OwnedFields } from "./OwnedFields"
import { bowSheet } from "../words/bowSheet"

const { sections } = bowSheet

/** The bow itself, its archer, what is asked of the setup, and words about it. */
export default function BowSheet() {
  return (
    <div className="bow-sheet">
      <Part title={sections.bow} open>
        <BowKind />
        <OwnedFields owner="bow" />
      </Part>
      <Part title={sections.targets} open>
        <TargetFields />
      </Part>
      <Part title={sections.archer}>
        <OwnedFields owner="archer" />
      </Part>
      <Part title={sections.riser}>
        <OwnedFields owner="bow/riser" />
      </Part>
      <Part title={sections.limbs}>
        <OwnedFields owner="bow/limbs" />
      </Part>
      <Part title={sections.stringAndArrow}>
        <Sub title={sections.string}>
          <OwnedFields owner="bow/string" />
          <StringWrap />
        </Sub>
        <Sub title={sections.arrow}>
          <OwnedFields owner="bow/arrow" />
        </Sub>
      </Part>
      <Part title={sections.mounts}>
        <Mounts />
      </Part>
      <Part title={sections.words}>
        <Words />
      </Part>
    </div>
  )
}

function Part({ title, open, children }: { title: string; open?: boolean; children: ReactNode }) {
  return (
    <details className="bow-part" open={open}>
      <summary>{title}</summary>
      {children}
    </details>
  )
}

function Sub({ title, children }: { title: string; children: ReactNode }) {
  return (
    <fieldset className="mount-fields">
      <legend>{title}</legend>
      {children}
    </fieldset>
  )
}
