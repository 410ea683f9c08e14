/**
 * A note's text for a reader of feeds. In: the page of the note, its address, and what stands for each
 * block. Out: HTML of the plainest kind: no class, no script, no drawing, every address whole, every card
 * given way to its results as plain text with their warnings.
 */
import { parseFragment, serialize, type DefaultTreeAdapterTypes } from 'parse5'
import { escape } from '../../card/html.ts'
import { words } from '../../words/words.ts'

type Node = DefaultTreeAdapterTypes.ChildNode
type Parent = DefaultTreeAdapterTypes.ParentNode
type Element = DefaultTreeAdapterTypes.Element

const kept = new Set(
  'p h2 h3 h4 h5 h6 ul ol li dl dt dd blockquote pre code em strong b i s del ins sub sup a img figure figcaption table caption thead tbody tfoot tr th td hr br time abbr cite q kbd math mrow mi mn mo mfrac msup msub msqrt mtext mspace'.split(
    ' ',
  ),
)
/** With all that is in them. */
const dropped = new Set(
  'script style svg button form input select textarea template nav h1'.split(' '),
)
const keptAttributes = new Set([
  'href',
  'src',
  'alt',
  'width',
  'height',
  'datetime',
  'colspan',
  'rowspan',
])
const addresses = new Set(['href', 'src'])

export function noteContent(
  page: string,
  address: string,
  blockText: (id: string) => string,
): string {
  const open = '<article class="prose">'
  const from = page.indexOf(open)
  if (from < 0) return ''
  // A card is an article too, and gone before the end of the note's own is looked for.
  const rest = page
    .slice(from + open.length)
    .replace(
      /<work-card\b[^>]*? data-block="([^"]*)"[^>]*>[^]*?<\/work-card>/g,
      (__, id: string) => `<pre>${escape(blockText(id))}</pre>`,
    )
  const article = rest.slice(0, Math.max(0, rest.indexOf('</article>')))
  const tree = parseFragment(article)
  tree.childNodes = plain(tree.childNodes, address, tree)
  return serialize(tree).trim()
}

const isElement = (node: Node): node is Element => 'tagName' in node

function plain(nodes: readonly Node[], address: string, parent: Parent): Node[] {
  return nodes.flatMap((node): Node[] => {
    if (!isElement(node)) return node.nodeName === '#comment' ? [] : [inside(node, parent)]
    const box = boxOf(node)
    if (box !== undefined)
      return [inside({ nodeName: '#text', value: box, parentNode: null }, parent)]
    if (dropped.has(node.tagName) || hidden(node)) return []
    if (!kept.has(node.tagName)) return plain(node.childNodes, address, parent)
    node.attrs = node.attrs
      .filter(({ name }) => keptAttributes.has(name))
      .map(({ name, value }) => ({
        name,
        value:
          addresses.has(name) && URL.canParse(value, address)
            ? new URL(value, address).href
            : value,
      }))
    node.childNodes = plain(node.childNodes, address, node)
    return [inside(node, parent)]
  })
}

/** What stands for the drawn box of a task; one that is carried on elsewhere says so in words. */
function boxOf({ attrs }: Element): string | undefined {
  const of = (key: string): string => attrs.find(({ name }) => name === key)?.value ?? ''
  if (!/\bmark-task\b/.test(of('class'))) return undefined
  return of('aria-label') === words`done` ? '☑' : '☐'
}

const hidden = ({ attrs }: Element): boolean =>
  attrs.some(({ name, value }) => name === 'hidden' || (name === 'aria-hidden' && value === 'true'))

function inside<T extends Node>(node: T, parent: Parent): T {
  node.parentNode = parent
  return node
}
