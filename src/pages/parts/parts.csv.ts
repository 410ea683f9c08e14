/** Every part of the site as a file for spreadsheets, with the builder's figures. */
import { published } from 'virtual:worked-notes'
import { byteOrderMark } from '../../card/take/csv.ts'
import { partsCsvText } from '../../card/take/parts-csv.ts'

export function GET(): Response {
  return new Response(byteOrderMark + partsCsvText(published), {
    headers: { 'content-type': 'text/csv; charset=utf-8; header=present' },
  })
}
