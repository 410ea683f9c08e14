/**
 * Parts as rows of a calculator's list: `added={parts}`. In: the list, and which parts. Out: a row for
 * each part that has what the list needs, every cell naming the part's own number, so that it is seen
 * where it came from. Undefined, with the reason reported, where there is none.
 *
 * A note knows the parts of its day: of other notes' parts those that are of a later date are not in its
 * lists. Where masses are added to what the vehicle weighed, a part that was on it before is in that already.
 */
import type { ListField } from '../../../calculators/define.ts'
import type { NoteSource, PartSource, PartsWord, RawInput } from '../note-source.ts'
import type { PartStatus } from '../published.ts'
import { report, type LinkContext } from './context.ts'
import type { Slot } from './inputs.ts'
import { figureOfAll, isOfAll, ofOne } from './part-figures.ts'
import { words } from '../../words/words.ts'
import { allOf, oneOf } from '../../words/lists.ts'

/** Field of a list -> figure of a part. */
const figureFor: Readonly<Record<string, string>> = {
  mass: 'totalMass',
  x: 'x',
  z: 'z',
  current: 'totalLoad',
  power: 'totalPower',
  duty: 'duty',
  surge: 'surge',
  cost: 'cost',
}

const statusesOf: Readonly<Record<PartsWord['which'], readonly PartStatus[]>> = {
  fitted: ['fitted', 'owned'],
  out: ['out', 'sold'],
  planned: ['planned', 'ordered', 'bought'],
  all: ['planned', 'ordered', 'bought', 'fitted', 'owned', 'spare', 'out', 'sold'],
}

const wordOf = ({ which }: PartsWord): string => (which === 'fitted' ? 'parts' : `parts.${which}`)

interface Owned {
  readonly owner: NoteSource
  readonly part: PartSource
}

type Row = Readonly<Record<string, RawInput>>

export function partRows(
  ctx: LinkContext,
  slot: Slot,
  field: ListField,
  word: PartsWord,
): Row[] | undefined {
  const { note, name } = slot
  const asked = numbersOf(field)
  const strange = asked.filter(({ name: one, needed }) => needed && figureFor[one] === undefined)
  if (strange.length > 0 || asked.every(({ name: one }) => figureFor[one] === undefined)) {
    report(ctx, note, word, {
      rule: 'no-such-parts',
      text: words`\`${name}={${wordOf(word)}}\`: a <Part> does not say what a ${field.row} needs (${asked.map((one) => one.name).join(', ')})`,
      hint: words`write the rows out, in a table inside <Calc>`,
    })
    return undefined
  }
  const statuses = statusesOf[word.which].filter((one) => !(one === 'owned' && isWeighed(field)))
  const rows = partsFor(ctx, note, word).flatMap((one): Row[] => {
    const row = rowOf(ctx, slot, field, word, one)
    return row === undefined ? [] : [row]
  })
  if (rows.length > 0) return rows
  report(ctx, note, word, {
    rule: 'no-parts',
    text: words`\`${name}={${wordOf(word)}}\`: no such part up to ${dayOf(note)} has what a ${field.row} needs`,
    allowed: words`parts that are ${statuses.join(', ')} and have ${wanted(asked)}`,
  })
  return undefined
}

/** What a row cannot do without; else any of what makes one. */
function wanted(asked: readonly Asked[]): string {
  const needed = asked.filter((one) => one.needed)
  const names = (needed.length > 0 ? needed : asked.filter(({ counts }) => counts)).map(
    (one) => `\`${attributeFor(one.name)}\``,
  )
  return needed.length > 0 ? allOf(names) : oneOf(names)
}

/** Its rows come on top of what stood on the scales. */
const isWeighed = ({ fields }: ListField): boolean => fields.mass?.type === 'number'

const dayOf = ({ meta }: NoteSource): string => meta.changed ?? meta.date

function partsFor(ctx: LinkContext, note: NoteSource, word: PartsWord): Owned[] {
  const statuses = statusesOf[word.which]
  return [...ctx.notes.values()].flatMap((owner) =>
    owner.parts
      .filter(({ status }) => statuses.includes(status))
      .filter(({ on = owner.meta.date }) => owner === note || on <= dayOf(note))
      .map((part): Owned => ({ owner, part })),
  )
}

interface Asked {
  readonly name: string
  /** A row cannot do without it. */
  readonly needed: boolean
  /** It makes a row: what the calculator takes for granted when left out does not. */
  readonly counts: boolean
}

const numbersOf = ({ fields }: ListField): Asked[] =>
  Object.entries(fields).flatMap(([name, field]) => {
    if (field.type !== 'number') return []
    const counts = field.assume === undefined
    return [{ name, needed: counts && field.optional !== true, counts }]
  })

/** What an author writes for it: `totalMass` is given as `mass`. */
function attributeFor(field: string): string {
  const figure = figureFor[field] ?? field
  return isOfAll(figure) ? ofOne[figure] : figure
}

/** The name of the number of a part that goes into a field. */
function numberFor(part: PartSource, field: string): string | undefined {
  const figure = figureFor[field]
  if (figure === undefined) return undefined
  if (isOfAll(figure)) return figureOfAll(part, figure)
  return Object.hasOwn(part.figures, figure) ? figure : undefined
}

function rowOf(
  ctx: LinkContext,
  slot: Slot,
  field: ListField,
  word: PartsWord,
  { owner, part }: Owned,
): Row | undefined {
  const asked = numbersOf(field)
  const has = (one: Asked): boolean => numberFor(part, one.name) !== undefined
  if (!asked.some((one) => one.counts && has(one))) return undefined
  const lacking = asked.filter((one) => one.needed && !has(one))
  if (part.status === 'owned' && isWeighed(field)) {
    if (lacking.length === 0) reportWeighed(ctx, slot, word, { owner, part })
    return undefined
  }
  if (lacking.length > 0) {
    reportLacking(ctx, slot, word, { owner, part }, lacking)
    return undefined
  }
  const { line, column } = word
  const row: Record<string, RawInput> = {}
  for (const [name, inner] of Object.entries(field.fields)) {
    const number = numberFor(part, name)
    if (inner.type === 'number' && number !== undefined)
      row[name] = { type: 'number', id: `${owner.slug}/${part.name}.${number}`, line, column }
    const text = inner.type === 'number' ? undefined : wordFor(name, owner, part)
    const fits = inner.type === 'choice' ? Object.hasOwn(inner.options, text ?? '') : true
    if (text !== undefined && fits) row[name] = { type: 'text', text, line, column }
  }
  if (owner !== slot.note) ctx.dependencies.get(slot.note.slug)?.add(owner.slug)
  return row
}

function reportLacking(
  ctx: LinkContext,
  { note, name }: Slot,
  word: PartsWord,
  { owner, part }: Owned,
  lacking: readonly Asked[],
): void {
  const missing = lacking.map((one) => `\`${attributeFor(one.name)}\``).join(', ')
  report(ctx, note, word, {
    rule: 'part-left-out',
    level: 'warning',
    text: words`the part \`${part.name}\` (${part.what}) is left out of \`${name}\`: it does not say ${missing}`,
    also: [{ file: owner.file, line: part.line, column: part.column }],
  })
}

function reportWeighed(
  ctx: LinkContext,
  { note, name }: Slot,
  word: PartsWord,
  { owner, part }: Owned,
): void {
  report(ctx, note, word, {
    rule: 'part-left-out',
    level: 'warning',
    text: words`the part \`${part.name}\` (${part.what}) is left out of \`${name}\`: it is \`owned\`, so it was on the vehicle when that was weighed`,
    hint: words`take its \`x\` out if that is so; if it came on since then, \`status="fitted" price="$0"\``,
    also: [{ file: owner.file, line: part.line, column: part.column }],
  })
}

/** As the cost of a project is sorted. */
const costPhases: Readonly<Record<string, string>> = {
  plan: 'survey',
  survey: 'survey',
  target: 'motor',
  strip: 'stripping',
  adapter: 'adapter',
  pack: 'pack',
  'high-voltage': 'traction',
  cooling: 'cooling',
  'twelve-volt': 'auxiliary',
  charging: 'charging',
  chassis: 'chassis',
  cabin: 'cabin',
  certification: 'approval',
}

const costStatuses: Readonly<Record<PartStatus, string>> = {
  planned: 'planned',
  ordered: 'ordered',
  bought: 'paid',
  fitted: 'paid',
  spare: 'paid',
  owned: 'owned',
  out: 'owned',
  sold: 'sold',
}

function wordFor(field: string, { meta }: NoteSource, part: PartSource): string | undefined {
  if (field === 'name') return part.what
  if (field === 'phase') return costPhases[meta.phase] ?? 'sundries'
  return field === 'status' ? costStatuses[part.status] : undefined
}
