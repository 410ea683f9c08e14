/**
 * Elements that are not the kit's: HTML, and what a note imports. They are left to MDX; what is checked
 * is that they are known, and that no number of the ledger stands in their attributes.
 */
import { nearestName } from '../../quantity/nearest.ts'
import type { Element } from './attributes.ts'
import { report, startOf, type ReadContext } from './context.ts'
import { anyNode } from './estree.ts'
import { kitElements } from './kit.ts'
import { sortNames } from './names.ts'

export function checkOther(ctx: ReadContext, element: Element): void {
  const name = element.name ?? ''
  if (name === 'img') checkImage(ctx, element)
  const [head = ''] = name.split('.')
  if (/^\p{Lu}/u.test(head) && !ctx.bound.has(head)) reportUnknown(ctx, element, head)
  for (const attribute of element.attributes) {
    const value = attribute.type === 'mdxJsxAttribute' ? attribute.value : attribute
    const program = typeof value === 'object' ? value?.data?.estree : undefined
    if (!program || sortNames(ctx, anyNode(program), 'attribute') !== 'ledger') continue
    report(ctx, startOf(attribute), {
      rule: 'number-in-attribute',
      text: `<${name}> is not one of the kit’s elements: a number of the ledger cannot stand in its attributes`,
      hint: 'put the number between the tags',
    })
  }
}

/** Only pictures in Markdown are made small and put on the site. */
function checkImage(ctx: ReadContext, element: Element): void {
  const source = element.attributes.find(
    (attribute) => attribute.type === 'mdxJsxAttribute' && attribute.name === 'src',
  )?.value
  if (typeof source !== 'string') return
  report(ctx, startOf(element), {
    rule: 'picture-as-tag',
    text: `<img> with \`${source}\`: nobody puts it on the site`,
    hint: 'write `![what it shows](./pump.jpg)`',
  })
}

function reportUnknown(ctx: ReadContext, element: Element, head: string): void {
  const name = element.name ?? ''
  const imported = [...ctx.bound].filter((other) => /^\p{Lu}/u.test(other))
  const near = nearestName(head, [...kitElements, ...imported])
  report(ctx, startOf(element), {
    rule: 'unknown-element',
    text: `there is no element <${name}>`,
    hint:
      near === undefined
        ? `import it, or write \`\\<${name}\` if you mean the sign`
        : `did you mean <${near}>?`,
  })
}
