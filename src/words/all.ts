/** The whole catalogue, one line a part. For its types and for tests: the page imports the parts it shows. */
export { bar } from "./bar"
export { draw } from "./draw"
export { lessonFaults } from "./lessonFaults"
export { lessons } from "./lessons"
export { partWords } from "./partWords"
export { places } from "./places"
export { plot } from "./plot"
export { search } from "./search"
