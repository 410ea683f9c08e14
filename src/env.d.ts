/** The ledger as pages get it from the kit's integration. */
declare module 'virtual:worked-notes' {
  /** Of the site's addresses, with `/` at both ends. */
  export const base: string
  /** In writing mode: drafts may show, and what only a finished site has is not there. */
  export const writing: boolean
  /** Whether the list of what can be written is a page. */
  export const listed: boolean
  /** In writing mode: what is wrong with the notes. */
  export const problems: readonly import('./ledger/problems.ts').Problem[]
  /** Pages once read open without a network. */
  export const offline: boolean
  /** The last day that the ledger knows of. */
  export const day: string
  export const published: import('./ledger/published.ts').Published
  /** By slug: ids of the numbers that the note's text names, also other notes'. */
  export const shownOn: Readonly<Record<string, readonly string[]>>
  /** By slug: the note's page, loaded when it is rendered. */
  export const noteModules: Readonly<
    Record<
      string,
      () => Promise<{
        readonly Content: import('astro').MDXInstance<Record<string, unknown>>['Content']
      }>
    >
  >
}

/** The words of the style sheet, as properties. */
declare module 'virtual:worked-notes/words.css' {}

/** The list of what can be written, finished. */
declare module 'virtual:worked-notes/writing' {
  export const html: string
}
