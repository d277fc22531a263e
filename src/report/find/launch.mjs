import { startBundled } from "../start-bundled.mjs"

await startBundled("find", "src/report/find/main.ts")
