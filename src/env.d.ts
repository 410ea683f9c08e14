/** The ledger as pages get it from the kit's integration. */
declare module 'virtual:worked-notes' {
  export const published: import('./ledger/published.ts').Published
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
