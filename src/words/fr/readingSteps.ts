import type { readingSteps as english } from "../readingSteps"

export const readingSteps: typeof english = {
  scale: {
    verb: "Peser",
    how: {
      first:
        "Poser une boîte de conserve sur la balance de cuisine, remettre la balance à zéro, et coucher l’arc en travers de la boîte.",
      next: "Rien d’autre ne doit toucher\u00a0: ni branche sur la table, ni doigt sur la corde.",
    },
    tells: "La masse, et, avec la masse de tout le reste, celle de la poignée.",
    usual: "Une balance de cuisine est juste à 2–5\u00a0g près.",
  },
  hang: {
    verb: "Suspendre",
    how: {
      first:
        "Suspendre l’arc par un seul point, à un cordon qui porte dix fois son poids, au-dessus de quelque chose de mou.",
      next: "Le laisser s’immobiliser, puis lire de combien il s’écarte de l’horizontale et de l’aplomb\u00a0: avec un téléphone contre son flanc, ou à l’œil devant un fil à plomb.",
      or: "Ou le poser sur un doigt ou une arête, et déplacer l’appui jusqu’à l’équilibre\u00a0: l’inclinaison est alors l’horizontale, et le point est l’arête.",
    },
    tells:
      "Une droite qui passe par le point d’équilibre. Deux points bien éloignés, par exemple sur la corde et sur un stabilisateur, donnent le point d’équilibre.",
    usual: "L’inclinaison est juste à un demi-degré près, le point à 2\u00a0mm près.",
  },
  swing: {
    verb: "Balancer",
    how: {
      first:
        "Suspendre l’arc à une tige lisse ou à une arête, pour qu’il se balance autour d’un seul axe sans se vriller.",
      next: "Le laisser se balancer d’une largeur de main de chaque côté, et appuyer une fois à chaque passage dans le même sens, 10 à 20 fois.",
      weights: "Retirer les masses oscillantes, ou les attacher\u00a0: elles comptent comme fixes.",
    },
    tells:
      "La résistance à la rotation autour de cet axe\u00a0: tangage, roulis ou lacet. Plus près du point d’équilibre, la mesure en dit plus.",
    usual: "Au pouce, le temps est juste à 0,15\u00a0s près sur l’ensemble des oscillations.",
  },
  twist: {
    verb: "Vriller",
    how: {
      first:
        "Suspendre l’arc à deux cordons verticaux égaux, un de chaque côté du point d’équilibre et à égale distance de lui.",
      next: "Le vriller un peu, le laisser aller, et appuyer une fois à chaque passage dans le même sens, 10 à 20 fois.",
      axes: "Couché sur le flanc, il donne le tangage\u00a0; debout, le lacet\u00a0; l’avant en haut ou en bas, le roulis.",
    },
    tells:
      "La résistance à la rotation autour de la verticale qui passe par le point d’équilibre\u00a0: le moyen le plus sûr pour le lacet et le roulis.",
    usual: "Au pouce, le temps est juste à 0,15\u00a0s près sur l’ensemble, l’écart des cordons à 2\u00a0mm près.",
  },
  hanging:
    "Ne laisser ni pied ni tête sous l’arc, vérifier le cordon et ses nœuds à chaque fois, et ne jamais armer un arc suspendu. Sur un arc bandé, vérifier d’abord la corde.",
  sensor: {
    missing: "Ce navigateur ne donne pas accès à un capteur d’inclinaison. Saisir l’inclinaison.",
    refused:
      "Le capteur d’inclinaison n’a pas été autorisé. Les réglages du navigateur pour cette page peuvent l’autoriser\u00a0; ou bien saisir l’inclinaison.",
    silent: "Le capteur d’inclinaison ne dit rien\u00a0: cet appareil n’en a peut-être pas. Saisir l’inclinaison.",
    askew:
      "Ainsi posé, le téléphone ne peut pas savoir où est l’avant\u00a0: le poser à plat contre le flanc de l’arc, écran vers l’extérieur.",
  },
  tapped: (swings, seconds, each) => `${swings} oscillations en ${seconds}\u00a0s, ${each}\u00a0s chacune`,
  missed: (swings) => `${swings} sans appui, ${swings < 2 ? "comptée" : "comptées"}`,
  doubled: (taps) => `${taps} ${taps < 2 ? "appui en double écarté" : "appuis en double écartés"}`,
  between: "\u00a0; ",
  picture: {
    scale:
      "Vu de dessus\u00a0: l’arc est couché sur le flanc sur une boîte de conserve posée sur une balance de cuisine\u00a0; branches, corde et stabilisateur ne touchent rien.",
    hang: "L’arc pend immobile à un cordon par un seul point, incliné\u00a0; un fil à plomb dans le prolongement du cordon passe par le point d’équilibre. Un coussin est posé dessous.",
    swing: "L’arc est suspendu à une arête lisse et se balance un peu de chaque côté, autour d’un seul axe.",
    twist:
      "L’arc pend couché à l’horizontale à deux cordons verticaux égaux, un de chaque côté du point d’équilibre, et se vrille autour de la verticale entre eux.",
    limbsFree: "branches libres",
    stringFree: "corde libre",
    rodFree: "stab. libre",
    tin: "boîte",
    zeroed: "balance, à 0",
    onePoint: "un point, un cordon solide",
    balancePoint: "point d’équilibre",
    below: "juste dessous",
    edge: "une tige ou arête lisse",
    asAxis: "pour axe",
    swings: "10 à 20 oscillations,",
    eachWay: "une main de chaque côté",
    cords: "cordons égaux",
    equallyFar: "à égale distance du milieu",
  },
}
