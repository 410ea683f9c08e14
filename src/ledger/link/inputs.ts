/**
 * One input of a block: a number typed there, a name or a sum, a word, or nothing. A number typed into
 * a block has no source: it counts as assumed, or as chosen where the calculator leaves that choice.
 */
import type { ChoiceField, NumberField, TextField } from '../../../calculators/define.ts'
import { asTyped, readChoice, readText, type SingleField } from '../input.ts'
import type { BlockSource, NoteSource, RawInput } from '../note-source.ts'
import type { Given } from '../published.ts'
import { report, type LinkContext } from './context.ts'
import { addNumber, summed } from './numbers.ts'
import { resolveSum } from './resolve.ts'
import { words } from '../../words/words.ts'
import { oneOf } from '../../words/lists.ts'

/** Where an input stands. */
export interface Slot {
  readonly note: NoteSource
  readonly block: BlockSource
  /** `pump.hoses.0.length` */
  readonly path: string
  /** `length` */
  readonly name: string
}

type RawNumber = Extract<RawInput, { readonly type: 'text' | 'sum' | 'number' }>

export function linkInput(
  ctx: LinkContext,
  slot: Slot,
  field: SingleField,
  raw: RawInput | undefined,
): Given | undefined {
  const { note, name } = slot
  if (raw === undefined) return leftOut(ctx, slot, field)
  if (raw.type === 'unread') return undefined
  if (raw.type === 'rows') {
    const text =
      field.type === 'number'
        ? words`\`${name}\` is one number, not a list`
        : words`\`${name}\` is one word, not a list`
    report(ctx, note, raw, { rule: 'not-a-list', text })
    return undefined
  }
  if (field.type === 'number') return linkNumber(ctx, slot, field, raw)
  if (raw.type === 'text') return linkWord(ctx, slot, field, raw)
  report(ctx, note, raw, {
    rule: 'not-a-word',
    text: words`\`${name}\` takes a word, not a number`,
    allowed: optionsOf(field),
  })
  return undefined
}

function linkNumber(
  ctx: LinkContext,
  { note, block, path }: Slot,
  field: NumberField,
  raw: RawNumber,
): Given | undefined {
  const common = { block: `${note.slug}/${block.name}`, of: field.of }
  if (raw.type !== 'text') {
    const expression = raw.type === 'number' ? { ref: raw.id } : resolveSum(ctx, note, raw.sum)
    if (expression === undefined) return undefined
    const id = addNumber(ctx, note, path, raw, { ...common, ...summed(expression) })
    return { type: 'number', id, how: 'reference' }
  }
  const isChoice = field.choice === true
  const kind = isChoice ? 'chosen' : 'assumed'
  const id = addNumber(ctx, note, path, raw, {
    ...common,
    kind,
    firmness: kind,
    typed: raw.text,
    because: isChoice
      ? words`chosen in this block`
      : words`typed into this block, without a source`,
  })
  return { type: 'number', id, how: 'literal' }
}

function linkWord(
  ctx: LinkContext,
  slot: Slot,
  field: ChoiceField | TextField,
  raw: Extract<RawInput, { readonly type: 'text' }>,
): Given | undefined {
  const read = field.type === 'text' ? readText(field, raw.text) : readChoice(field, raw.text)
  if (read.ok) return { type: 'word', value: String(read.value), how: 'literal' }
  report(ctx, slot.note, raw, { ...read, text: `\`${inBlock(slot)}\`: ${read.text}` })
  return undefined
}

/** The calculator's own value where it has one; else it is missing, unless it may be. */
function leftOut(ctx: LinkContext, slot: Slot, field: SingleField): Given | undefined {
  const { note, block, path } = slot
  if (field.type === 'number') {
    const usual = usualOf(ctx, block, field)
    if (usual !== undefined) {
      const owner = `${note.slug}/${block.name}`
      const id = addNumber(ctx, note, path, block, { ...usual, block: owner, of: field.of })
      return { type: 'number', id, how: 'assumed-default' }
    }
  }
  if (field.type === 'choice' && field.assume !== undefined)
    return { type: 'word', value: field.assume.value, how: 'assumed-default' }
  if (field.optional !== true) reportMissing(ctx, slot, field)
  return undefined
}

/** The calculator's, or what the site's settings say where no other input says it already. */
function usualOf({ site }: LinkContext, { given }: BlockSource, field: NumberField) {
  const { assume, setting } = field
  if (assume !== undefined)
    return {
      kind: 'assumed',
      firmness: 'assumed',
      typed: asTyped(assume.value, field),
      because: assume.because,
    } as const
  const said =
    setting === undefined || given[setting.unless] !== undefined ? undefined : site[setting.name]
  if (said === undefined) return undefined
  return {
    kind: 'chosen',
    firmness: 'chosen',
    typed: said,
    because: words`said in the site’s settings`,
  } as const
}

function reportMissing(ctx: LinkContext, slot: Slot, field: SingleField): void {
  const { note, block, name } = slot
  report(ctx, note, block, {
    rule: 'missing-input',
    text: words`\`${block.name}\` does not say \`${inBlock(slot)}\`: ${asClause(field.help)}`,
    allowed: optionsOf(field),
    hint:
      field.type === 'number'
        ? oneOf([`\`${name}="${asTyped(field.usual[0], field)}"\``, `\`${name}={aName}\``])
        : undefined,
  })
}

/** `hoses.0.length` of `pump.hoses.0.length`: the row is said too. */
const inBlock = ({ block, path }: Slot): string => path.slice(block.name.length + 1)

const optionsOf = (field: SingleField): string | undefined =>
  field.type === 'choice' ? Object.keys(field.options).join(', ') : undefined

/** A sentence of help as the end of another. */
export const asClause = (text: string): string =>
  text.charAt(0).toLowerCase() + text.slice(1).replace(/\.$/, '')
