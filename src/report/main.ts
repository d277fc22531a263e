import { printed } from "./printed"
import { readText } from "./readText"
import { run } from "./run"

printed(run(process.argv.slice(2), readText))
