/**
 * A lesson that someone asked for: one that comes with the bench, by its name; a file's text; the one in a link, still
 * packed; the bow on the bench, to be shown; or the list to choose from.
 */
export type LessonAsked =
  | { readonly kind: "list" }
  | { readonly kind: "bench" }
  | { readonly kind: "shipped"; readonly id: string }
  | { readonly kind: "link"; readonly link: string }
  | { readonly kind: "file"; readonly name: string; readonly text: string }
