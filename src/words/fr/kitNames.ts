import type { kitNames as english } from "../kitNames"

export const kitNames: typeof english = {
  pieces: "pièces dans la boîte",
  discs: "disques dans la boîte",
  splayFrom: "écartement de",
  splayTo: "écartement à",
  splayStep: "écartement par pas de",
  droopFrom: "inclinaison vers le bas de",
  droopTo: "inclinaison vers le bas à",
  droopStep: "inclinaison vers le bas par pas de",
  mostDiscs: "disques par pile, au plus",
  count: "réglages listés",
  reachForward: "stabilisation en avant du grip, au plus",
  reachSide: "stabilisation de chaque côté, au plus",
  pitch: "résistance en tangage, au moins",
  yaw: "résistance en lacet, au moins",
  roll: "résistance en roulis, au moins",
}
