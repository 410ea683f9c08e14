/** The numbers of one note as a file for spreadsheets, with the builder's figures. */
import type { APIRoute, GetStaticPaths } from 'astro'
import { published } from 'virtual:worked-notes'
import { byteOrderMark, csvText } from '../../../card/take/csv.ts'
import { blocksOf, calculators, numbersOf } from '../../../layouts/data.ts'

export const getStaticPaths = (() =>
  published.notes.map(({ slug }) => ({ params: { slug } }))) satisfies GetStaticPaths

export const GET: APIRoute = ({ params: { slug = '' } }) => {
  const own = { ...published, numbers: numbersOf(slug), blocks: blocksOf(slug) }
  return new Response(byteOrderMark + csvText(own, undefined, calculators), {
    headers: { 'content-type': 'text/csv; charset=utf-8; header=present' },
  })
}
