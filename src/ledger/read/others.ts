/**
 * Elements that are not the kit's: HTML, and what a note imports. They are left to MDX; what is checked
 * is that they are known, and that no number of the ledger stands in their attributes.
 */
import { toString } from 'mdast-util-to-string'
import { nearestName } from '../../quantity/nearest.ts'
import type { Element } from './attributes.ts'
import { lineAndColumn, report, startOf, type ReadContext } from './context.ts'
import { anyNode } from './estree.ts'
import { kitElements } from './kit.ts'
import { sortNames } from './names.ts'
import { example, isPictureAddress } from './pictures.ts'
import { words } from '../../words/words.ts'

export function checkOther(ctx: ReadContext, element: Element): void {
  const name = element.name ?? ''
  if (name === 'img') checkImage(ctx, element)
  else if (name !== 'a') checkPictureNames(ctx, element)
  if (name === 'a') readAnchor(ctx, element)
  const [head = ''] = name.split('.')
  const inCapitals = kitElements.some((known) => known.toLowerCase() === head.toLowerCase())
  if ((/^\p{Lu}/u.test(head) || inCapitals) && !ctx.bound.has(head))
    reportUnknown(ctx, element, head)
  for (const attribute of element.attributes) {
    const value = attribute.type === 'mdxJsxAttribute' ? attribute.value : attribute
    const program = typeof value === 'object' ? value?.data?.estree : undefined
    if (!program || sortNames(ctx, anyNode(program), words`attribute`) !== 'ledger') continue
    report(ctx, startOf(attribute), {
      rule: 'number-in-attribute',
      text: words`<${name}> is not one of the kit’s elements: a number of the ledger cannot stand in its attributes`,
      hint: words`put the number between the tags`,
    })
  }
}

/** Only links in Markdown are made addresses of the site. */
function readAnchor(ctx: ReadContext, element: Element): void {
  const url = element.attributes.find(
    (attribute) => attribute.type === 'mdxJsxAttribute' && attribute.name === 'href',
  )?.value
  if (typeof url !== 'string') return
  const at = startOf(element)
  if (/^(?:[a-z][a-z\d+.-]*:|#)/i.test(url))
    ctx.links.push({ url, text: toString(element), ...lineAndColumn(at) })
  else
    report(ctx, at, {
      rule: 'link-as-tag',
      text: words`<a> with \`${url}\`: nobody makes it an address of the site`,
      hint: words`write \`[words](${url})\``,
    })
}

/** Only pictures in Markdown are made small and put on the site: `<source>`, `<video>` and others name none. */
function checkPictureNames(ctx: ReadContext, element: Element): void {
  for (const attribute of element.attributes) {
    if (attribute.type !== 'mdxJsxAttribute' || typeof attribute.value !== 'string') continue
    const [address = ''] = attribute.value.trim().split(/[\s,]+/)
    if (!/^(?:src|srcset|srcSet|poster|data|href|xlink:href|xlinkHref)$/.test(attribute.name))
      continue
    if (!isPictureAddress(address)) continue
    report(ctx, startOf(element), {
      rule: 'picture-as-tag',
      text: words`<${element.name ?? ''}> with \`${address}\`: nobody puts it on the site`,
      hint: words`write ${example}`,
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
    text: words`<img> with \`${source}\`: nobody puts it on the site`,
    hint: words`write ${example}`,
  })
}

function reportUnknown(ctx: ReadContext, element: Element, head: string): void {
  const name = element.name ?? ''
  const imported = [...ctx.bound].filter((other) => /^\p{Lu}/u.test(other))
  const near = nearestName(head, [...kitElements, ...imported])
  report(ctx, startOf(element), {
    rule: 'unknown-element',
    text: words`there is no element <${name}>`,
    hint:
      near === undefined
        ? words`import it, or write \`\\<${name}\` if you mean the sign`
        : words`did you mean <${near}>?`,
  })
}
