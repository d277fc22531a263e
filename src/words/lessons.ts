import { spoken } from "./language"

/** The list of lessons and what shows one. A lesson's own words are in its file. */
export const lessons = spoken("lessons", {
  title: "Lessons",
  choose: "Each takes a few minutes: look, foretell, try. The bow on your bench stays as it is.",
  present: "Show the bow on the bench",
  presentAbout: "One idea at a time, on a big screen; against the held setup if there is one.",
  own: "A lesson of your own is a file: drop it on the page, or open it like a setup.",
  listAway: "The list could not be fetched. Is the network there?",
  loading: "Loading…",
  /** Label of the picture, for screen readers. */
  picture: "The bow of this lesson",
  step: (at: string, of: string) => `Step ${at} of ${of}`,
  copyLink: "Copy the link",
  linkCopied: "Copied.",
  /** Label of the field where the browser does not let the page copy. */
  linkByHand: "The link to this lesson: copy it with the keyboard",
  noLink: "The link was not made. Is the network there?",
  leave: "Leave the lesson",
  /** Ends a lesson's list, and a bow that is shown. */
  toBench: "Back to the bench",
  all: "All lessons",
  /** Goes one step back. */
  back: "Back",
  next: "Next",
  reveal: "Show the answer",
  big: "Big screen",
  usualSize: "Usual size",
  /** Marks of choices, in brackets behind them. */
  yours: "your answer",
  borneOut: "what the numbers say",
  /** Before what is said of the choice that was made. */
  asForetold: "As you said.",
  notSo: "Not so.",
  /** Before what is said once the goal is met. */
  done: "Done.",
  keys: "Page down or → goes on, page up or ← goes back, and so does a presenter's clicker. Escape leaves.",
  /** A number that is set on both arms of a V-bar at once. */
  bothArms: (title: string) => `${title} (both sides alike)`,
  /** Labels of the buttons at a slider's ends. */
  less: (title: string) => `Less, ${title}`,
  more: (title: string) => `More, ${title}`,
  /** A goal: "60.0 to 75.0 mm"; only the second has its unit. */
  span: (from: string, to: string) => `${from} to ${to}`,
  /** What is said of a bow that is shown, one idea after the other; `{now …}` is put in by the player. */
  ideas: {
    balance: {
      heading: "Where it balances",
      say: "On one finger it would rest {now centreMm.forward} ahead of the grip. A minus in height is below the grip.",
    },
    hand: {
      heading: "What the hand holds",
      say: "All of {now massG}, and the pull of the nose: weight times the level distance from the grip.",
    },
    drawn: {
      heading: "At full draw",
      say: "The line of pull lifts the front with {now fullDraw.liftNm}, the rig drops it with {now fullDraw.noseDownNm}. This is left over: plus raises the front.",
    },
    turning: {
      heading: "How hard it is to turn",
      say: "Pitch is the front rising and dropping, yaw is swinging left and right, roll is canting.",
    },
  },
})
