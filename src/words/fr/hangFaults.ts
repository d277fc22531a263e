import type { hangFaults as english } from "../hangFaults"

export const hangFaults: typeof english = {
  noPlace: "n’est pas un endroit où suspendre une masse",
  tooMany: (tries, most) =>
    `${tries} essais demandés\u00a0; ${most} au plus sont faits\u00a0: prendre des pas plus grands ou moins d’endroits`,
  outside: (given, from, to) => [given, " ne convient pas\u00a0; il faut une valeur entre ", from, " et ", to],
  below: (given, from) => [given, " ne convient pas\u00a0; il faut au moins ", from],
  noStep: (given) => [given, " ne convient pas\u00a0; il faut un pas supérieur à 0"],
}
