/** Where the picture of a note lies within the site; pages name it without drawing anything. */
export const socialPath = (slug: string): string => `notes/${slug}/social.png`
