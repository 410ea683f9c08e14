/** What the page of one block hands to its reader's browser. */
import type { APIRoute, GetStaticPaths } from 'astro'
import { published } from 'virtual:worked-notes'
import { editionOf, pageFiguresOf, pageFiguresText } from '../../../../card/index.ts'
import { calculators } from '../../../../layouts/data.ts'
import { partBelow } from '../../../../site/part.ts'

export const getStaticPaths = (() =>
  published.blocks.map(({ note, name }) => ({
    params: { slug: note, block: name },
  }))) satisfies GetStaticPaths

export const GET: APIRoute = ({ params: { slug = '', block = '' } }) => {
  const id = `${slug}/${block}`
  const part = partBelow(published, slug, [id])
  const figures = pageFiguresOf(part, slug, editionOf(published, slug), calculators, id)
  return new Response(pageFiguresText(figures), {
    headers: { 'content-type': 'application/json; charset=utf-8' },
  })
}
