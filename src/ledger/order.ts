/**
 * The two orders of the ledger: numbers and blocks by id, problems by place. By the code of each
 * letter, never by a language's rules, so that the same notes give the same file on every machine.
 */
import type { Place } from './problems.ts'

export const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0

export const byPlace = (a: Place, b: Place): number =>
  a.file === b.file ? a.line - b.line || a.column - b.column : a.file < b.file ? -1 : 1
