import { type Result } from "./errors"
import type { LimbPlace } from "./limbPlace"
import type { RecurveBow } from "./schema"
export function recurvePlace(bow: RecurveBow, t: number): Result<LimbPlace> { throw new Error(String(bow) + t) }
