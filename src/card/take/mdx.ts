/**
 * A block as MDX that a builder can paste into a note of their own: every name is the literal it stood
 * for, with its unit, so that it stands alone and works to the same results. A comment before it says
 * whose figures they are, where from, and the block's warnings.
 *
 * What the calculator assumes by itself is left to it: written out it would count as the builder's.
 * For the same reason the comment names the guesses among what is pasted. A reader's figures do not
 * inherit the builder's reason for accepting a stop.
 */
import { standingWords } from '../../../calculators/hazard-names.ts'
import type { PublishedBlock } from '../../ledger/published.ts'
import type { CardContext } from '../context.ts'
import { entriesOf, type Entry } from './entries.ts'
import { literalOf } from './literal.ts'
import { attributeText, commentText, stringText } from './mdx-text.ts'
import { provenance } from './provenance.ts'
import { warningsOf } from './warnings.ts'
import type { Whose } from './whose.ts'
import { words } from '../../words/words.ts'

export function mdxText(
  block: PublishedBlock,
  ctx: CardContext,
  whose: Whose,
  given: PublishedBlock['given'] = block.given,
): string {
  const entries = entriesOf(block, ctx, given)
  return `${commentOf(block, ctx, whose, entries)}\n\n${elementOf(block, ctx, whose, given, entries)}\n`
}

const isDefault = ({ given }: Entry): boolean => given.how === 'assumed-default'

function commentOf(
  block: PublishedBlock,
  ctx: CardContext,
  whose: Whose,
  entries: readonly Entry[],
): string {
  const named = (some: readonly Entry[]): string => some.map(({ label }) => label).join('; ')
  const guesses = entries.filter((one) => !isDefault(one) && one.number?.firmness === 'assumed')
  const unused = block.unused ?? []
  const defaults = entries.filter((one) => isDefault(one) && !unused.includes(one.path))
  const untold = entries.filter(({ number }) => number?.value === null)
  const lines = [
    block.title,
    ...provenance(block, ctx, whose),
    words`Every figure here is a literal without its source: give it one of your own.`,
    ...(guesses.length === 0 ? [] : [words`Guesses, or resting on guesses: ${named(guesses)}.`]),
    ...(defaults.length === 0
      ? []
      : [words`Left to what the calculator assumes: ${named(defaults)}.`]),
    ...(untold.length === 0
      ? []
      : [words`Cannot be told, and is for you to give: ${named(untold)}.`]),
    ...warningsOf(block.hazards),
    standingWords,
  ]
  return `{/*\n${lines.map(commentText).join('\n')}\n*/}`
}

function elementOf(
  block: PublishedBlock,
  ctx: CardContext,
  whose: Whose,
  given: PublishedBlock['given'],
  entries: readonly Entry[],
): string {
  const title = ctx.calculator(block.calculator)?.title
  const accepted = whose.who === 'builder' && sameInputs(block, ctx) ? block.accepted : null
  const attributes = [
    attributeText('id', block.name),
    attributeText('use', block.calculator),
    ...(block.title === title ? [] : [attributeText('title', block.title)]),
    ...(accepted === null ? [] : [attributeText('accept', accepted)]),
    ...singles(entries, ctx),
    ...lists(given, entries, ctx),
  ]
  return `<Calc\n  ${attributes.join('\n  ')}\n/>`
}

/** The builder accepted a stop for the builder's figures. */
function sameInputs(block: PublishedBlock, { builder }: CardContext): boolean {
  const before = builder?.block(block.id)
  return builder === undefined || JSON.stringify(before?.inputs) === JSON.stringify(block.inputs)
}

/** As typed, key of a choice or text; undefined where there is nothing to write. */
function textOf(entry: Entry, ctx: CardContext): string | undefined {
  const { given, number, field } = entry
  if (isDefault(entry)) return undefined
  if (given.type === 'word') return given.value
  return number === undefined || field.type !== 'number' ? undefined : literalOf(number, field, ctx)
}

function singles(entries: readonly Entry[], ctx: CardContext): readonly string[] {
  return entries.flatMap((entry) => {
    const text = entry.inList ? undefined : textOf(entry, ctx)
    return text === undefined ? [] : [attributeText(entry.path, text)]
  })
}

function lists(
  given: PublishedBlock['given'],
  entries: readonly Entry[],
  ctx: CardContext,
): readonly string[] {
  return Object.entries(given).flatMap(([name, list]) => {
    if (list.type !== 'rows') return []
    const rows = list.rows.map((_, index) => {
      const row = `${name}.${index}.`
      const cells = entries.flatMap((entry) => {
        const text = entry.path.startsWith(row) ? textOf(entry, ctx) : undefined
        return text === undefined ? [] : [`${entry.path.slice(row.length)}: ${stringText(text)}`]
      })
      return `    { ${cells.join(', ')} },`
    })
    return [`${name}={[\n${rows.join('\n')}\n  ]}`]
  })
}
