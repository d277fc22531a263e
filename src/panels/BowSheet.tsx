import type { ReactNode } from "react"
import { BowKind, StringWrap } from "./bow/BowKind"
import "./bow/bow.css"
import { Mounts } from "./bow/Mounts"
import { TargetFields } from "./bow/TargetFields"
import { Words } from "./bow/Words"
import { OwnedFields } from "./OwnedFields"

/** The bow itself, its archer, what is asked of the setup, and words about it. */
export default function BowSheet() {
  return (
    <div className="bow-sheet">
      <Part title="Bow" open>
        <BowKind />
        <OwnedFields owner="bow" />
      </Part>
      <Part title="Targets" open>
        <TargetFields />
      </Part>
      <Part title="Archer">
        <OwnedFields owner="archer" />
      </Part>
      <Part title="Riser">
        <OwnedFields owner="bow/riser" />
      </Part>
      <Part title="Limbs">
        <OwnedFields owner="bow/limbs" />
      </Part>
      <Part title="String and arrow">
        <Sub title="String">
          <OwnedFields owner="bow/string" />
          <StringWrap />
        </Sub>
        <Sub title="Arrow">
          <OwnedFields owner="bow/arrow" />
        </Sub>
      </Part>
      <Part title="Mounts">
        <Mounts />
      </Part>
      <Part title="Name and notes">
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
