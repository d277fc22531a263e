// odex ships its TypeScript beside its JavaScript, and that source does not pass a strict compiler. Through this
// door the compiler sees odex.d.mts instead.
export { Solver } from "odex"
