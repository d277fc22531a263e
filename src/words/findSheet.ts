import { spoken } from "./language"

/** The Find sheet: the box of pieces, what is wanted, the search's buttons and the list of setups. */
export const findSheet = spoken("findSheet", {
  box: {
    heading: "What is in the box",
    empty: "Nothing yet. Add pieces, open a kit, or begin with an invented one.",
    holds: (name: string, pieces: number) => `“${name}”: ${pieces} ${pieces === 1 ? "piece" : "pieces"}.`,
    /** After one of these two. */
    notKept: "The browser does not keep it: save it as a file.",
    open: "Open kit…",
    save: "Save kit",
    saveTable: "Save table",
    shipped: "Open an invented kit",
    /** In the list itself, as long as none is chosen. */
    shippedShort: "Invented kits…",
    notFetched: "The invented kits could not be fetched.",
    pieces: "Pieces",
    name: "Name of the box",
    undo: "Undo in the box",
    redo: "Redo",
  },
  /** Each kind of piece: heading, button, what is announced, what the new piece and one without a name are called. */
  rods: { title: "Rods", add: "Add a rod", added: "Added a rod", fresh: "new rod", one: "rod" },
  extenders: {
    title: "Extenders",
    add: "Add an extender",
    added: "Added an extender",
    fresh: "new extender",
    one: "extender",
  },
  vbars: { title: "V-bars", add: "Add a V-bar", added: "Added a V-bar", fresh: "new V-bar", one: "V-bar" },
  dampers: { title: "Dampers", add: "Add a damper", added: "Added a damper", fresh: "new damper", one: "damper" },
  discs: {
    title: "Discs",
    add: "Add a kind of disc",
    added: "Added a kind of disc",
    fresh: "new disc",
    one: "kind of disc",
  },
  piece: {
    takenOut: (piece: string) => `${piece} taken out of the box`,
    takeOut: "Take out of the box",
    count: (piece: string, count: number) => `${piece}: ${count}`,
    less: (piece: string) => `One less, ${piece}`,
    more: (piece: string) => `One more, ${piece}`,
    inBox: (count: number) => `${count} in the box`,
    name: "Name",
    /** A number's full name: its label and the piece it belongs to. */
    numberOf: (label: string, piece: string) => `${label} of ${piece}`,
    /** Beside a number that may be left out. */
    value: "value",
    /** Where a rod may go: the list's label, and what can be chosen. */
    use: "Goes",
    uses: { front: "at the front, or by itself", side: "on a V-bar's arm", any: "anywhere" },
    /** The same after its length and mass: "650 mm, 104 g, side". */
    usesShort: { front: "front", side: "side" },
    splay: (angle: string) => `splay ${angle}`,
    splayRange: (from: string, to: string) => `splay ${from} to ${to}`,
    droop: (angle: string) => `droop ${angle}`,
    droopRange: (from: string, to: string) => `droop ${from} to ${to}`,
  },
  wanted: {
    heading: "What is wanted",
    back: "Back to the bow's own targets",
    own: "The bow's own targets, as on the Bow sheet; changed here they count for the search only.",
    /** Beside the two ends of a band, and beside a limit's number. */
    from: "from",
    to: "to",
    atMost: "at most",
    atLeast: "at least",
    /** The ends' full names; `limit` is what the band is of. */
    fromOf: (limit: string) => `${limit}, from`,
    toOf: (limit: string) => `${limit}, to`,
    best: "Best is",
    more: "More limits, and what may be built",
    note: "The bow counts as held level and upright. No rod is ever loaded past its maker's rated end weight.",
    hold: "Balance and turn resistance count",
    brace: "at brace",
    drawn: "at full draw",
    arms: "Arms of a V-bar",
    alike: "both alike",
    free: "each for itself",
    variety: "Listed of the same pieces",
    bestAngles: "the best angles",
    everySetting: "every setting",
    mounts: "Built anew; the other mounts stay as they are",
    mount: { front: "front mount", upper: "upper mount", lower: "lower mount", back: "back mount" },
    swings: {
      front: "front: stays, a swing weight hangs there",
      upper: "upper: stays, a swing weight hangs there",
      lower: "lower: stays, a swing weight hangs there",
      back: "back: stays, a swing weight hangs there",
    },
    /** Before "no mount" or one of the mounts. */
    vbarOn: "A V-bar may stand on",
    noMount: "no mount",
    onMount: { front: "the front mount", upper: "the upper mount", lower: "the lower mount", back: "the back mount" },
    mustVbar: "A V-bar has to be there",
    mustFrontRod: "A front rod has to be there",
  },
  search: {
    section: "Search",
    start: "Find setups",
    stop: "Stop",
    empty: "The box is empty: there is nothing to build from.",
    progress: "Combinations covered",
    listing: "Listing what can be built…",
    /** Announced, before what came of the search. */
    found: (setups: number) => `${setups} ${setups === 1 ? "setup" : "setups"} found.`,
  },
  setups: {
    heading: (setups: number) => (setups === 1 ? "One setup" : `${setups} setups`),
    /** The same with what they were found for, when that is not what is asked now: "the earlier kit". */
    headingFor: (setups: number, earlier: string) =>
      `${setups === 1 ? "One setup" : `${setups} setups`} for ${earlier}`,
    bowChanged: "The bow has changed since this search: search again to see or try one of these.",
    caption: "Setups found, the best first unless ordered otherwise",
    /** Heads of narrow columns; `forward` is the balance point, `net` the net lift, `turn` the turn resistance. */
    heads: { rank: "No.", mass: "Mass", forward: "Fwd", net: "Net", turn: "Turn" },
    turn: "Turn resistance: the sum of pitch, yaw and roll about the grip",
    orderBy: {
      rank: "Order by rank",
      mass: "Order by mass",
      forward: "Order by balance point forward",
      net: "Order by net lift at full draw",
      turn: "Order by turn resistance",
    },
    tryHead: "Try it",
    whatToDo: (setup: number) => `Setup ${setup}: what to do`,
  },
  /** Puts a setup on the bow. `name` is one of the first two. */
  trying: {
    setup: (number: number) => `setup ${number}`,
    nearest: (limit: string) => `the nearest for ${limit}`,
    button: "Try",
    label: (name: string) => `Try ${name}`,
    /** In the history, after "Undo". */
    tried: (name: string) => `${name} tried`,
    onBow: (name: string) => `${name} is on the bow. Undo takes it back.`,
  },
  misses: {
    heading: "What stands in the way",
    headingFor: (earlier: string) => `What stood in the way for ${earlier}`,
    whatToDo: "What to do",
    whatToDoFor: (limit: string) => `What to do, the nearest for ${limit}`,
  },
  /** An opened setup: what to change, and its figures. */
  detail: {
    heading: "From the rig as it is",
    nothing: "Nothing to do: it is that rig.",
    brace: (forward: string, up: string, right: string) =>
      `Balance at brace ${forward} forward, ${up} up, ${right} to the right.`,
    drawn: (forward: string, up: string, right: string) =>
      `Balance at full draw ${forward} forward, ${up} up, ${right} to the right.`,
    turn: (pitch: string, yaw: string, roll: string) => `Pitch ${pitch}, yaw ${yaw}, roll ${roll}.`,
    reach: (forward: string, side: string) => `The rig reaches ${forward} forward and ${side} to a side.`,
  },
  /** All setups as points, mass across and turn resistance up. */
  picture: {
    label: "Setups found: mass across, turn resistance up",
    mass: (unit: string) => `mass, ${unit}`,
    turn: (unit: string) => `turn resistance, ${unit}, up`,
    point: (setup: number, mass: string, turn: string) => `Setup ${setup}: ${mass}, turn resistance ${turn}`,
    pointOnLine: (setup: number, mass: string, turn: string) =>
      `Setup ${setup}: ${mass}, turn resistance ${turn}, on the line`,
    caption: "Each point is one setup; turn resistance is the sum of pitch, yaw and roll about the grip.",
    /** After the caption, where there is a line, or but one such point. */
    line: "On the line stand those that no other one listed beats in both: filled points.",
    oneBest: "None beats the filled one in either.",
  },
})
