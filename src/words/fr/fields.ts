import type { fields as english } from "../fields"

export const fields: typeof english = {
  none: "aucun",
  isNone: (number) => `${number} : non donné`,
  is: (number, value) => `${number} : ${value}`,
  needed: (number, allowed) => `${number} : il faut ${allowed}.`,
  wrong: (number, reason) => `${number} : ${reason}.`,
  less: (number) => `Un de moins, ${number}`,
  more: (number) => `Un de plus, ${number}`,
  tip: (allowed) => `${allowed}. Les flèches changent d’un pas, avec Maj de plusieurs.`,
  inUnit: (unit, allowed) => `en ${unit}, ${allowed}`,
}
