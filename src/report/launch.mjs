import { startBundled } from "./start-bundled.mjs"

await startBundled("report", "src/report/main.ts")
