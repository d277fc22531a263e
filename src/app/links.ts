/** The setup that is held in the page's address, still packed; see takeaway/link. */
export const linkIn = (hash: string): string | null => (hash.startsWith("#setup=") ? hash : null)
