import type * as english from "../all"
import { bar } from "./bar"

/** The whole catalogue in French; a part that is missing here is a type error. */
export const french = { bar } satisfies typeof english
