/** What one note's page hands to its reader's browser. */
import type { APIRoute, GetStaticPaths } from 'astro'
import { published, shownOn } from 'virtual:worked-notes'
import { editionOf, pageFiguresOf, pageFiguresText } from '../../../card/index.ts'
import { calculators } from '../../../layouts/data.ts'
import { partOf } from '../../../site/part.ts'

export const getStaticPaths = (() =>
  published.notes.map(({ slug }) => ({ params: { slug } }))) satisfies GetStaticPaths

export const GET: APIRoute = ({ params: { slug = '' } }) => {
  const part = partOf(published, slug, shownOn[slug] ?? [])
  const figures = pageFiguresOf(part, slug, editionOf(published, slug), calculators)
  return new Response(pageFiguresText(figures), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  })
}
