/** What one place of a page shows: the page finds the place by its offset in the file. */
import type { PublishedSource } from '../published.ts'

export type Shown =
  | {
      readonly type: 'number'
      readonly id: string
      readonly unit?: string
      readonly digits?: number
      readonly linked: boolean
      readonly anchor?: string
    }
  | { readonly type: 'table'; readonly ids: readonly string[] }
  | { readonly type: 'block'; readonly id: string }
  | { readonly type: 'part'; readonly id: string; readonly linked: boolean }
  | { readonly type: 'nominal'; readonly text: string }
  | { readonly type: 'quoted'; readonly text: string; readonly source: PublishedSource }
