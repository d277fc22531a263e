import { spoken } from "./language"

/** Why the flattest hang of a swing weight is not searched for. A gap of type P is put in words later. */
export const hangFaults = spoken("hangFaults", {
  noPlace: "is no place to hang a weight from",
  tooMany: (tries: string, most: string) =>
    `${tries} tries asked for; at most ${most} are made: take larger steps or fewer places`,
  outside: <P>(given: P, from: P, to: P): (string | P)[] => [given, " given; ", from, " … ", to, " is needed"],
  below: <P>(given: P, from: P): (string | P)[] => [given, " given; no less than ", from, " is needed"],
  noStep: <P>(given: P): (string | P)[] => [given, " given; a step above 0 is needed"],
})
