/**
 * Numbers in a note's prose that no element gives a source.
 *
 * In: the tree and text of a note, and the site's nominals. Out: at most two problems (the dangerous
 * ones: torque, current, voltage, pressure; and the rest), each with elements ready to paste, and
 * the sizes that were taken for names. Code, block quotes, links, images and what stands inside the
 * kit's elements are never looked at. The markup inside a sentence does not hide a number: `**5** A`.
 */
import type { Nodes, Parents, Root, Table } from 'mdast'
import { visitParents } from 'unist-util-visit-parents'
import type { Place, Problem } from '../ledger/problems.ts'
import { isPhotoElement, kitElements } from '../ledger/read/kit.ts'
import { markStart } from '../ledger/read/photo.ts'
import type { Stretch as Broken } from './broken.ts'
import { placesIn } from './place.ts'
import { constantsOf, plainResult, type Constants } from './plain-values.ts'
import { findNumbers, type Find } from './prose-numbers.ts'
import { unitAt } from './prose-units.ts'
import { words } from '../words/words.ts'
import { counted } from '../words/counted.ts'

export interface ProseOptions {
  readonly nominals: readonly string[]
  readonly file: string
  readonly status: 'draft' | 'other'
  /** The text the tree was read from, for the places. */
  readonly text: string
  /** Stretches of it that are no prose. */
  readonly broken?: readonly Broken[]
}

export interface NominalUse {
  readonly text: string
  readonly place: Place
}

export interface Unsourced {
  readonly problems: readonly Problem[]
  readonly nominals: readonly NominalUse[]
}

export function findUnsourced(tree: Root, options: ProseOptions): Unsourced {
  const placed = placeFinds(tree, options)
  const open = placed.filter(({ find }) => !find.nominal)
  return {
    problems: [
      ...group(
        open.filter(({ find }) => find.danger),
        'unsourced-danger',
        'error',
      ),
      ...group(
        open.filter(({ find }) => !find.danger),
        'unsourced-number',
        options.status === 'draft' ? 'warning' : 'error',
      ),
    ],
    nominals: placed
      .filter(({ find }) => find.nominal)
      .map(({ find, place }) => ({ text: find.typed, place })),
  }
}

interface Placed {
  readonly find: Find
  readonly place: Place
}

function placeFinds(tree: Root, options: ProseOptions): readonly Placed[] {
  const { text, broken = [] } = options
  const placeAt = placesIn(text, options.file)
  return stretches(tree, { pointing: false, unit: '', constants: constantsOf(tree) }).flatMap(
    (stretch) =>
      findNumbers(stretch.text, { nominals: options.nominals, pointing: stretch.pointing }).flatMap(
        (find) => {
          const at = offsetOf(find, stretch, text)
          if (broken.some(({ start, end }) => at >= start && at < end)) return []
          return { find: asTyped(find, stretch), place: placeAt(at) }
        },
      ),
  )
}

/** A run of words between blocks: a paragraph, a heading, a cell. */
interface Stretch {
  readonly text: string
  readonly pieces: readonly Piece[]
  readonly pointing: boolean
  /** From the head of the table's column, put behind a bare number. */
  readonly unit: string
}

interface Piece {
  /** Offset in the stretch. */
  readonly at: number
  readonly value: string
  /** Where to look for it in the note. */
  readonly from: number
  readonly to: number
}

interface Around {
  readonly pointing: boolean
  readonly unit: string
  readonly constants: Constants
  /** Words of a mark -> how many signs of them say where it stands. */
  readonly places?: ReadonlyMap<Nodes, number>
}

/** Stands for what is not looked at, so that words on both sides do not join. */
const hole = '\uFFFC'

function stretches(node: Nodes, around: Around): readonly Stretch[] {
  if (unseen.has(node.type)) return []
  if (node.type === 'table') return tableStretches(node, around)
  if (node.type === 'paragraph') {
    const captioned = node.children[0]?.type === 'image'
    return [stretch(node, captioned ? { ...around, pointing: true } : around)]
  }
  if (node.type === 'listItem') {
    const task = typeof node.checked === 'boolean'
    return all(node, task ? { ...around, pointing: true } : around)
  }
  if (node.type === 'mdxJsxFlowElement') {
    if (isPhotoElement(node.name ?? '')) return inPhoto(node, around)
    if (kitElements.includes(node.name ?? '')) return []
    const caption = /^(?:figcaption|caption)$/i.test(node.name ?? '')
    return all(node, caption ? { ...around, pointing: true } : around)
  }
  if (sentences.has(node.type)) return [stretch(node, around)]
  return 'children' in node ? all(node, around) : []
}

/** Captions and marks; the place at which a mark begins is no number of the note. */
function inPhoto(element: Parents, around: Around): readonly Stretch[] {
  const places = new Map<Nodes, number>()
  visitParents(element, 'listItem', (item) => {
    const mark = markStart(item)
    if (mark !== undefined) places.set(mark.words, mark.length)
  })
  return all(element, { ...around, pointing: true, places })
}

const unseen = new Set(['blockquote', 'code', 'mdxjsEsm', 'mdxFlowExpression'])
/** What holds words: also words right inside a block element, without a paragraph. */
const sentences = new Set(
  'heading tableCell text emphasis strong delete mdxJsxTextElement link linkReference'.split(' '),
)

function all(node: Parents, around: Around): readonly Stretch[] {
  return node.children.flatMap((child) => stretches(child, around))
}

/** `| Time | Current (A) |`: the bare numbers of that column are currents. */
function tableStretches(node: Table, around: Around): readonly Stretch[] {
  const [head, ...rows] = node.children
  const units = (head?.children ?? []).map((cell) => headUnit(stretch(cell, around).text))
  return [
    ...(head?.children ?? []).map((cell) => stretch(cell, around)),
    ...rows.flatMap((row) =>
      row.children.map((cell, column) => stretch(cell, { ...around, unit: units[column] ?? '' })),
    ),
  ]
}

/** One letter alone heads many columns (`C`, `L`); `A` and `V` are never passed over. */
function headUnit(text: string): string {
  const typed = /(?:[([]\s*([^()[\]]+?)\s*[)\]]|,\s*(\S+)|\bin\s+(\S+))\s*$/.exec(text)
  const alone = /^(?:A|V|\S{2,})$/.test(text.trim()) ? text.trim() : ''
  const unit = typed?.[1] ?? typed?.[2] ?? typed?.[3] ?? alone
  return unit !== '' && unitAt(`1 ${unit}`, 1)?.end === unit.length + 2 ? unit : ''
}

function stretch(node: Nodes, { pointing, unit, places, constants }: Around): Stretch {
  const pieces: Piece[] = []
  let text = ''
  let cursor = node.position?.start.offset ?? 0
  const end = node.position?.end.offset ?? cursor
  const add = (one: Nodes): void => {
    if (one.type === 'text') {
      const skipped = places?.get(one) ?? 0
      const value = one.value.slice(skipped)
      const from = (one.position?.start.offset ?? cursor) + skipped
      const to = one.position?.end.offset ?? end
      pieces.push({ at: text.length, value, from, to })
      text += value
      if (one.position) cursor = to
    } else if (one.type === 'break') {
      text += '\n'
    } else if (one.type === 'mdxTextExpression' && plainResult(one, constants) !== undefined) {
      const from = one.position?.start.offset ?? cursor
      const to = one.position?.end.offset ?? end
      const value = plainResult(one, constants) ?? ''
      pieces.push({ at: text.length, value, from, to })
      text += value
      cursor = to
    } else if ('children' in one && isOpen(one)) {
      for (const child of one.children) add(child)
    } else {
      text += hole
      cursor = one.position?.end.offset ?? cursor
    }
  }
  if (node.type === 'text' || phrasing.has(node.type)) add(node)
  else if ('children' in node) for (const one of node.children) add(one)
  // Line ends inside a paragraph are spaces to a reader.
  const flat = text.replace(/[\r\n]/g, ' ')
  const bare = unit !== '' && /^\s*[-+−±~<>≤≥]?\s*[\d.,/½¼¾–-]+\s*$/.test(flat)
  return {
    text: bare ? `${flat.trimEnd()} ${unit}` : flat,
    pieces,
    pointing,
    unit: bare ? unit : '',
  }
}

const phrasing = new Set('emphasis strong delete mdxJsxTextElement link linkReference'.split(' '))

/** Whether the words inside belong to the sentence and are looked at. */
function isOpen(node: Nodes): boolean {
  if (node.type === 'mdxJsxTextElement' || node.type === 'mdxJsxFlowElement') {
    return !kitElements.includes(node.name ?? '')
  }
  return node.type === 'emphasis' || node.type === 'strong' || node.type === 'delete'
}

function asTyped(find: Find, { unit }: Stretch): Find {
  return unit === '' ? find : { ...find, typed: find.typed.trim() }
}

/** Escapes and entities make a text shorter than what was typed: the number is looked for there. */
function offsetOf(find: Find, { pieces }: Stretch, text: string): number {
  const piece = pieces.findLast(({ at }) => at <= find.start) ?? pieces[0]
  if (!piece) return 0
  const inside = find.start - piece.at
  const source = text.slice(piece.from, piece.to)
  if (source === piece.value) return piece.from + inside
  const first = /^\S+/.exec(piece.value.slice(inside))?.[0] ?? ''
  const earlier = piece.value.slice(0, inside).split(first).length - 1
  let at = source.indexOf(first)
  for (let count = 0; count < earlier && at >= 0; count += 1) at = source.indexOf(first, at + 1)
  return piece.from + Math.max(at, 0)
}

function group(
  placed: readonly Placed[],
  rule: string,
  level: Problem['level'],
): readonly Problem[] {
  const [first, ...others] = placed
  if (!first) return []
  const list = placed.map(({ find }) => `\`${find.typed}\``).join(', ')
  const said =
    rule === 'unsourced-danger'
      ? counted(
          placed.length,
          words`nothing says where ${list} comes from (torque, current, voltage, pressure)`,
          words`nothing says where ${list} come from (torque, current, voltage, pressure)`,
        )
      : counted(
          placed.length,
          words`nothing says where ${list} comes from`,
          words`nothing says where ${list} come from`,
        )
  const elements = placed
    .flatMap(({ find }) => find.values)
    .map((value) => `<Reading id="…" value="${value.replaceAll('"', '')}" with="…" />`)
  return [
    {
      rule,
      level,
      ...first.place,
      text: said,
      allowed: words`a number of its own kind (\`<Reading>\`, \`<Rated>\`, \`<Assumed>\`, \`<Chosen>\`, \`<Calc>\`), \`<Nominal>\` round the name of a size, \`<Quoted>\` round a figure that is only mentioned`,
      hint: [words`write in place of each:`, ...elements].join('\n'),
      ...(others.length > 0 && { also: others.map(({ place }) => place) }),
    },
  ]
}
