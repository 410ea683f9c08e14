/** The ledger as pages get it from the kit's integration. */
declare module 'virtual:worked-notes' {
  /** Of the site's addresses, with `/` at both ends. */
  export const base: string
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
