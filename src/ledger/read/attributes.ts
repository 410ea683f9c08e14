/**
 * The attributes of the kit's elements, each a text, something in braces, or nothing (`<Calc spare />`).
 * Attributes spread from an object are refused: they could hide a number.
 */
import type { MdxJsxAttribute, MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx'
import type { At } from '../note-source.ts'
import type { Said } from '../report.ts'
import { report, startOf, type ReadContext } from './context.ts'
import { onlyExpression, type AnyNode } from './estree.ts'
import { words } from '../../words/words.ts'

export type Element = MdxJsxFlowElement | MdxJsxTextElement

export interface Attribute extends At {
  readonly name: string
  readonly value:
    | { readonly type: 'text'; readonly text: string }
    | { readonly type: 'braces'; readonly node: AnyNode; readonly source: string }
    | { readonly type: 'none' }
}

export function attributesOf(ctx: ReadContext, element: Element): Attribute[] {
  return element.attributes.flatMap((attribute) => {
    if (attribute.type === 'mdxJsxAttribute') return [readAttribute(attribute, element)]
    report(ctx, startOf(attribute), {
      rule: 'spread',
      text: words`\`{…}\` inside <${element.name ?? ''}>: write each attribute out`,
    })
    return []
  })
}

/** Of two with one name only the first would count. */
export function checkTwice(ctx: ReadContext, { name, attributes }: Element): void {
  const seen = new Set<string>()
  for (const attribute of attributes) {
    if (attribute.type !== 'mdxJsxAttribute') continue
    if (seen.has(attribute.name))
      report(ctx, startOf(attribute), {
        rule: 'attribute-twice',
        text: words`<${name ?? ''}> has \`${attribute.name}\` a second time`,
        hint: words`keep one of the two`,
      })
    seen.add(attribute.name)
  }
}

function readAttribute(attribute: MdxJsxAttribute, element: Element): Attribute {
  const { line, column } = startOf(attribute.position === undefined ? element : attribute)
  return { name: attribute.name, value: valueOf(attribute), line, column }
}

function valueOf({ value }: MdxJsxAttribute): Attribute['value'] {
  if (typeof value === 'string') return { type: 'text', text: value }
  const node = onlyExpression(value?.data?.estree)
  if (!value || node === undefined) return { type: 'none' }
  return { type: 'braces', node, source: value.value.trim() }
}

export const named = (attributes: readonly Attribute[], name: string): Attribute | undefined =>
  attributes.find((attribute) => attribute.name === name)

/** The text of an attribute, trimmed; anything else is reported, as `wrong` when it is given. */
export function textOf(
  ctx: ReadContext,
  attributes: readonly Attribute[],
  name: string,
  wrong: Said = { rule: 'not-text', text: words`\`${name}\` is a text in quotes` },
): string | undefined {
  const attribute = named(attributes, name)
  if (attribute === undefined) return undefined
  if (attribute.value.type === 'text') return attribute.value.text.trim()
  report(ctx, attribute, wrong)
  return undefined
}
