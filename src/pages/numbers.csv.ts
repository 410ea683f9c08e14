/** Every number of the site as a file for spreadsheets, with the builder's figures. */
import { published } from 'virtual:worked-notes'
import { byteOrderMark, csvText } from '../card/take/csv.ts'
import { calculators } from '../layouts/data.ts'

export function GET(): Response {
  return new Response(byteOrderMark + csvText(published, undefined, calculators), {
    headers: { 'content-type': 'text/csv; charset=utf-8; header=present' },
  })
}
