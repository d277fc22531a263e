/** The setup that is held in the page's address, still packed; see takeaway/link. */
export const linkIn = (hash: string): string | null => (hash.startsWith("#setup=") ? hash : null)

/** The lesson that is held in it. */
export const lessonLinkIn = (hash: string): string | null => (hash.startsWith("#lesson=") ? hash : null)
