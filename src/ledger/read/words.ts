/**
 * Numbers that nothing is worked from: <Nominal>, a size's name (`½ inch hose`), and <Quoted>, what
 * somebody else claims.
 */
import { toString } from 'mdast-util-to-string'
import { attributesOf, named, type Element } from './attributes.ts'
import { report, startOf, type ReadContext } from './context.ts'
import { words } from '../../words/words.ts'

export function readNominal(ctx: ReadContext, element: Element): void {
  const at = startOf(element)
  if (element.attributes.length > 0)
    report(ctx, at, {
      rule: 'nominal-with-name',
      text: words`nothing can rest on a <Nominal>: it takes no attributes`,
    })
  ctx.uses.push({ type: 'nominal', text: toString(element), ...at })
}

export function readQuoted(ctx: ReadContext, element: Element): void {
  const at = startOf(element)
  const value = named(attributesOf(ctx, element), 'source')?.value
  const source = value?.type === 'text' ? value.text.trim() : ''
  if (source !== '') ctx.uses.push({ type: 'quoted', text: toString(element), source, ...at })
  else {
    const text = words`<Quoted> does not say who is quoted: \`source="…"\``
    report(ctx, at, { rule: 'no-source', text })
  }
}
