/**
 * Headings and their addresses. A number's name is an address on the page as well, so the two must not
 * meet. Until its numbers are known, a heading's address is made of its source text.
 */
import type GithubSlugger from 'github-slugger'
import type { Heading } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import { report, startOf, type ReadContext } from './context.ts'
import { lineOfText } from './tasks.ts'
import { words } from '../../words/words.ts'

export function readHeading(ctx: ReadContext, heading: Heading, slugger: GithubSlugger): void {
  const name = slugger.slug(headingText(heading))
  const start = startOf(heading)
  const pieces = lineOfText(heading.children)
  ctx.headings.set(name, start)
  ctx.steps.push({ name, depth: heading.depth, pieces, ...start })
}

/** The text a heading is addressed by: its words, and the source of what is in braces. */
export function headingText(heading: Heading): string {
  let text = ''
  visitParents(heading, (node) => {
    if (node.type === 'text' || node.type === 'inlineCode' || node.type === 'mdxTextExpression')
      text += node.value
    else if (node.type === 'mdxJsxTextElement') {
      const id = node.attributes.find(
        (attribute) => attribute.type === 'mdxJsxAttribute' && attribute.name === 'id',
      )
      if (id !== undefined && typeof id.value === 'string') text += id.value
    }
  })
  return text
}

export function checkHeadings(ctx: ReadContext): void {
  for (const [name, at] of ctx.declared) {
    const heading = ctx.headings.get(name)
    if (heading === undefined) continue
    const { line, column } = heading
    report(ctx, at, {
      rule: 'clash-with-heading',
      text: words`the name \`${name}\` is also the address of a heading in this note`,
      hint: words`choose another name, or word the heading differently`,
      also: [{ file: ctx.options.file, line, column }],
    })
  }
}
