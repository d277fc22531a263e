import type * as english from "../all"
import { bar } from "./bar"
import { beside } from "./beside"
import { draw } from "./draw"
import { drawn } from "./drawn"
import { findSheet } from "./findSheet"
import { hill } from "./hill"
import { hills } from "./hills"
import { lessonFaults } from "./lessonFaults"
import { lessons } from "./lessons"
import { meanings } from "./meanings"
import { nudge } from "./nudge"
import { partWords } from "./partWords"
import { picture } from "./picture"
import { places } from "./places"
import { plot } from "./plot"
import { pose } from "./pose"
import { readings } from "./readings"
import { readout } from "./readout"
import { search } from "./search"
import { verdict } from "./verdict"

/** The whole catalogue in French; a part that is missing here is a type error. */
export const french = {
  bar,
  beside,
  draw,
  drawn,
  findSheet,
  hill,
  hills,
  lessonFaults,
  lessons,
  meanings,
  nudge,
  partWords,
  picture,
  places,
  plot,
  pose,
  readings,
  readout,
  search,
  verdict,
} satisfies typeof english
