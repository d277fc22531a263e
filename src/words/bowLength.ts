import { spoken } from "./language"

/** A string's length, and what a bow that takes such a string is called by. */
export const bowLength = spoken("bowLength", {
  string: (length: string, inches: string) => `${length}, a ${inches}-inch bow`,
})
