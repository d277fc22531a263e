import type * as english from "../all"
import { bar } from "./bar"
import { draw } from "./draw"
import { drawn } from "./drawn"
import { hill } from "./hill"
import { hills } from "./hills"
import { lessonFaults } from "./lessonFaults"
import { lessons } from "./lessons"
import { partWords } from "./partWords"
import { places } from "./places"
import { plot } from "./plot"
import { search } from "./search"

/** The whole catalogue in French; a part that is missing here is a type error. */
export const french = {
  bar,
  draw,
  drawn,
  hill,
  hills,
  lessonFaults,
  lessons,
  partWords,
  places,
  plot,
  search,
} satisfies typeof english
