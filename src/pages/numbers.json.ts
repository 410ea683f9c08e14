/** The ledger as a file, also while writing: the browser works a reader's figures from it. */
import { published } from 'virtual:worked-notes'
import { recordText } from '../ledger/record.ts'

export function GET(): Response {
  return new Response(recordText(published), { headers: { 'content-type': 'application/json' } })
}
