/**
 * A block: what it was given, field by field, each number with an entry of its own, and the block
 * itself with nothing worked yet. Its results have no entry before it is worked.
 */
import type { Calculator, Field } from '../../../calculators/define.ts'
import type { BlockSource, NoteSource, RawInput } from '../note-source.ts'
import type { Given } from '../published.ts'
import { didYouMean, likelyName } from '../report.ts'
import { report, type LinkContext } from './context.ts'
import { linkInput, type Slot } from './inputs.ts'
import { linkList } from './lists.ts'
import { withTables } from './tables.ts'
import { words } from '../../words/words.ts'
import { oneOf } from '../../words/lists.ts'

export function linkBlock(ctx: LinkContext, note: NoteSource, block: BlockSource): void {
  const calculator = ctx.calculators.get(block.use)
  if (calculator === undefined) {
    reportNoCalculator(ctx, note, block)
    return
  }
  const tabled = withTables(ctx, note, block, calculator)
  reportUnknownInputs(ctx, note, block, calculator, tabled)
  const raw = withSlips(calculator, tabled)
  const given: Record<string, Given> = {}
  for (const [name, field] of Object.entries(calculator.inputs)) {
    const slot = { note, block, path: `${block.name}.${name}`, name }
    const made = linkField(ctx, slot, field, raw[name])
    if (made !== undefined) given[name] = made
  }
  ctx.blocks.push({
    id: `${note.slug}/${block.name}`,
    note: note.slug,
    name: block.name,
    title: block.title ?? calculator.title,
    calculator: block.use,
    given,
    inputs: {},
    outputs: {},
    verdict: 'unknown',
    provisional: false,
    accepted: block.accept ?? null,
    findings: [],
    working: [],
    hazards: [],
    file: note.file,
    line: block.line,
  })
}

/** What stands under a name with a slip is not missing as well. */
function withSlips(
  { inputs }: Calculator,
  raw: Readonly<Record<string, RawInput>>,
): Readonly<Record<string, RawInput>> {
  const known = Object.keys(inputs)
  const meant = Object.entries(raw).flatMap(([name, { line, column }]) => {
    const likely = inputs[name] === undefined ? likelyName(name, known) : undefined
    return likely === undefined ? [] : [[likely, { type: 'unread', line, column }] as const]
  })
  return { ...Object.fromEntries(meant), ...raw }
}

const linkField = (
  ctx: LinkContext,
  slot: Slot,
  field: Field,
  raw: RawInput | undefined,
): Given | undefined =>
  field.type === 'list' ? linkList(ctx, slot, field, raw) : linkInput(ctx, slot, field, raw)

function reportNoCalculator(ctx: LinkContext, note: NoteSource, block: BlockSource): void {
  const known = ctx.knownCalculators
  report(ctx, note, block.useAt, {
    rule: 'unknown-calculator',
    text: words`there is no calculator \`${block.use}\``,
    hint:
      didYouMean(block.use, known) ??
      likelyWords(block.use, known) ??
      words`there are: ${known.join(', ')}`,
  })
}

/** `pump-loop` for `pump-and-loop`: those with all its words. */
function likelyWords(read: string, known: readonly string[]): string | undefined {
  const parts = read
    .toLowerCase()
    .split(/[^a-z\d]+/)
    .filter((part) => part !== '')
  const alike = known.filter((name) => parts.every((part) => name.split('-').includes(part)))
  return parts.length === 0 || alike.length === 0
    ? undefined
    : words`did you mean ${oneOf(alike.map((name) => `\`${name}\``))}?`
}

function reportUnknownInputs(
  ctx: LinkContext,
  note: NoteSource,
  block: BlockSource,
  calculator: Calculator,
  raw: Readonly<Record<string, RawInput>>,
): void {
  const known = Object.keys(calculator.inputs)
  for (const [name, input] of Object.entries(raw))
    if (calculator.inputs[name] === undefined)
      report(ctx, note, input, {
        rule: 'unknown-field',
        text: words`the calculator \`${block.use}\` has no input \`${name}\``,
        allowed: known.join(', '),
        hint: didYouMean(name, known),
      })
}
