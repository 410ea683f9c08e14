/** The numbers that one note's page stands on, for a reader who tries other figures there. */
import type { APIRoute, GetStaticPaths } from 'astro'
import { published, shownOn } from 'virtual:worked-notes'
import { recordText } from '../../../ledger/record.ts'
import { partOf } from '../../../site/part.ts'

export const getStaticPaths = (() =>
  published.notes.map(({ slug }) => ({ params: { slug } }))) satisfies GetStaticPaths

export const GET: APIRoute = ({ params: { slug = '' } }) =>
  new Response(recordText(partOf(published, slug, shownOn[slug] ?? [])), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  })
