import type * as english from "../all"
import { acts } from "./acts"
import { bar } from "./bar"
import { beside } from "./beside"
import { bowLength } from "./bowLength"
import { bowSheet } from "./bowSheet"
import { cautions } from "./cautions"
import { compare } from "./compare"
import { described } from "./described"
import { draw } from "./draw"
import { drawn } from "./drawn"
import { edits } from "./edits"
import { fieldNames } from "./fieldNames"
import { fields } from "./fields"
import { figures } from "./figures"
import { fileFaults } from "./fileFaults"
import { files } from "./files"
import { findFaults } from "./findFaults"
import { findSheet } from "./findSheet"
import { fixes } from "./fixes"
import { handedness } from "./handedness"
import { handle } from "./handle"
import { hangFaults } from "./hangFaults"
import { hill } from "./hill"
import { hills } from "./hills"
import { keptMenu } from "./keptMenu"
import { kitFaults } from "./kitFaults"
import { kitFiles } from "./kitFiles"
import { kitNames } from "./kitNames"
import { knobs } from "./knobs"
import { lessonFaults } from "./lessonFaults"
import { lessons } from "./lessons"
import { lift } from "./lift"
import { limbFaults } from "./limbFaults"
import { links } from "./links"
import { meanings } from "./meanings"
import { measureNames } from "./measureNames"
import { measureSheet } from "./measureSheet"
import { notices } from "./notices"
import { nudge } from "./nudge"
import { nudgeNames } from "./nudgeNames"
import { numbersTable } from "./numbersTable"
import { offline } from "./offline"
import { page } from "./page"
import { partsTable } from "./partsTable"
import { partWords } from "./partWords"
import { picture } from "./picture"
import { picture3d } from "./picture3d"
import { places } from "./places"
import { plot } from "./plot"
import { pose } from "./pose"
import { readings } from "./readings"
import { readingSteps } from "./readingSteps"
import { readout } from "./readout"
import { rig } from "./rig"
import { rigSteps } from "./rigSteps"
import { sceneFaults } from "./sceneFaults"
import { search } from "./search"
import { settings } from "./settings"
import { setupCard } from "./setupCard"
import { shipped } from "./shipped"
import { sliders } from "./sliders"
import { stopped } from "./stopped"
import { suggestion } from "./suggestion"
import { takeAway } from "./takeAway"
import { triedSetups } from "./triedSetups"
import { typedNumbers } from "./typedNumbers"
import { verdict } from "./verdict"

/** The whole catalogue in French; a part that is missing here is a type error. */
export const french = {
  acts,
  bar,
  beside,
  bowLength,
  bowSheet,
  cautions,
  compare,
  described,
  draw,
  drawn,
  edits,
  fieldNames,
  fields,
  figures,
  fileFaults,
  files,
  findFaults,
  findSheet,
  fixes,
  handedness,
  handle,
  hangFaults,
  hill,
  hills,
  keptMenu,
  kitFaults,
  kitFiles,
  kitNames,
  knobs,
  lessonFaults,
  lessons,
  lift,
  limbFaults,
  links,
  meanings,
  measureNames,
  measureSheet,
  notices,
  nudge,
  nudgeNames,
  numbersTable,
  offline,
  page,
  partsTable,
  partWords,
  picture,
  picture3d,
  places,
  plot,
  pose,
  readings,
  readingSteps,
  readout,
  rig,
  rigSteps,
  sceneFaults,
  search,
  settings,
  setupCard,
  shipped,
  sliders,
  stopped,
  suggestion,
  takeAway,
  triedSetups,
  typedNumbers,
  verdict,
} satisfies typeof english
