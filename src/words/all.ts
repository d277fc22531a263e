/** The whole catalogue, one line a part. For its types and for tests: the page imports the parts it shows. */
export { bar } from "./bar"
export { lessonFaults } from "./lessonFaults"
export { lessons } from "./lessons"
export { partWords } from "./partWords"
export { places } from "./places"
export { search } from "./search"
