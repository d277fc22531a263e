import type { bowLength as english } from "../bowLength"

export const bowLength: typeof english = {
  string: (length, inches) => `${length}, soit un arc de ${inches}\u00a0pouces`,
}
