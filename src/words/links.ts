import { spoken } from "./language"

/** What a link with a setup or a lesson in it comes to. The faults stand in a notice, after a semicolon or alone. */
export const links = spoken("links", {
  /** Announced. */
  opened: (setup: string) => `Opened ${setup} from a link`,
  notOpened: "The setup in the link was not opened; the bench is as it was.",
  notCompared: "The setup in the link was not compared; the bench is as it was.",
  tooLong: "the link is far too long to be a setup",
  nothing: "there is no setup in the link",
  noLesson: "there is no lesson in the link",
  lessonNotOpened: "The lesson in the link was not opened; the bench is as it was.",
  newer: (version: string, known: string) =>
    `the link has version ${version}, made by a newer bench; this one reads version ${known}. Reload the page to get the newest`,
  damaged: "the link is damaged: a part of it is missing or was changed on the way",
  tooLarge: "the link holds far more than a setup",
})
