/**
 * The examples as HTML. In: a piece of a note's tree that the ledger has filled. Out: its HTML. Only
 * what examples are made of is known here; anything else is an error, so that no example is shown by half.
 */
import type { Nodes } from 'mdast'
import { escape } from '../card/html.ts'

const plainTags: Readonly<Record<string, string>> = {
  paragraph: 'p',
  strong: 'strong',
  emphasis: 'em',
  tableRow: 'tr',
  listItem: 'li',
}

export function htmlOfNode(node: Nodes): string {
  const inner = (): string => ('children' in node ? node.children.map(htmlOfNode).join('') : '')
  const tag = plainTags[node.type]
  if (tag !== undefined) return `<${tag}${classOf(node)}>${inner()}</${tag}>`
  switch (node.type) {
    case 'text':
      return escape(node.value)
    case 'inlineCode':
      return `<code>${escape(node.value)}</code>`
    case 'list': {
      const list = node.ordered === true ? 'ol' : 'ul'
      return `<${list}${classOf(node)}>${inner()}</${list}>`
    }
    case 'table': {
      const [head, ...rows] = node.children
      const heads = head?.children.map((cell) => `<th scope="col">${childrenOf(cell)}</th>`) ?? []
      return `<table><thead><tr>${heads.join('')}</tr></thead><tbody>${rows.map(htmlOfNode).join('')}</tbody></table>`
    }
    case 'tableCell':
      return `<td>${inner()}</td>`
    case 'mdxJsxFlowElement':
    case 'mdxJsxTextElement': {
      const finished = node.attributes.find((one) => 'name' in one && one.name === 'html')?.value
      if (typeof finished === 'string') return finished
      const name = node.name ?? ''
      if (!/^[a-z]+$/.test(name)) throw new Error(`an example holds <${name}>, which is not filled`)
      const attributes = node.attributes.map((one) =>
        one.type === 'mdxJsxAttribute' && typeof one.value === 'string'
          ? ` ${one.name}="${escape(one.value)}"`
          : '',
      )
      return `<${name}${attributes.join('')}>${inner()}</${name}>`
    }
    default:
      throw new Error(`an example holds a ${node.type}`)
  }
}

const childrenOf = (node: Nodes): string =>
  'children' in node ? node.children.map(htmlOfNode).join('') : ''

function classOf({ data }: Nodes): string {
  const properties: unknown = data !== undefined && 'hProperties' in data ? data.hProperties : {}
  const name: unknown =
    typeof properties === 'object' && properties !== null && 'className' in properties
      ? properties.className
      : undefined
  return typeof name === 'string' ? ` class="${escape(name)}"` : ''
}
