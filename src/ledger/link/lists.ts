/** A list of parts: as many rows as the calculator takes, each cell an input of its own. */
import type { ListField } from '../../../calculators/define.ts'
import type { RawInput } from '../note-source.ts'
import type { Given } from '../published.ts'
import { didYouMean } from '../report.ts'
import { report, type LinkContext } from './context.ts'
import { asClause, linkInput, type Slot } from './inputs.ts'
import { partRows } from './part-rows.ts'
import { words } from '../../words/words.ts'
import { counted } from '../../words/counted.ts'

type RawRow = Readonly<Record<string, RawInput>>

export function linkList(
  ctx: LinkContext,
  slot: Slot,
  field: ListField,
  raw: RawInput | undefined,
): Given | undefined {
  const { note, block, name } = slot
  const hint = words`a table inside <Calc> with the columns ${Object.keys(field.fields).join(', ')}`
  if (raw?.type === 'unread') return undefined
  if (raw === undefined) {
    if (field.optional !== true)
      report(ctx, note, block, {
        rule: 'missing-input',
        text: words`\`${block.name}\` has no list of ${name}: ${asClause(field.help)}`,
        hint,
      })
    return undefined
  }
  if (raw.type !== 'rows') {
    const text = words`\`${name}\` is a list: one row for each ${field.row}`
    report(ctx, note, raw, { rule: 'not-a-list', text, hint })
    return undefined
  }
  const [least, most] = field.rows
  const parts = raw.parts === undefined ? [] : partRows(ctx, slot, field, raw.parts)
  if (parts === undefined) return undefined
  const rows = [...parts, ...raw.rows]
  if (rows.length < least || rows.length > most) {
    report(ctx, note, raw, {
      rule: 'list-length',
      text: counted(
        rows.length,
        words`\`${name}\` has ${rows.length} row`,
        words`\`${name}\` has ${rows.length} rows`,
      ),
      allowed: words`${least} to ${most} rows, one for each ${field.row}`,
    })
    return undefined
  }
  return {
    type: 'rows',
    rows: rows.map((row, index) =>
      linkRow(ctx, { ...slot, path: `${slot.path}.${index}` }, field, row),
    ),
  }
}

function linkRow(
  ctx: LinkContext,
  slot: Slot,
  field: ListField,
  row: RawRow,
): Record<string, Given> {
  reportUnknownCells(ctx, slot, field, row)
  const made: Record<string, Given> = {}
  for (const [name, inner] of Object.entries(field.fields)) {
    const cell = linkInput(ctx, { ...slot, path: `${slot.path}.${name}`, name }, inner, row[name])
    if (cell !== undefined) made[name] = cell
  }
  return made
}

function reportUnknownCells(
  ctx: LinkContext,
  { note }: Slot,
  { row: part, fields }: ListField,
  row: RawRow,
): void {
  const known = Object.keys(fields)
  for (const [name, input] of Object.entries(row))
    if (fields[name] === undefined)
      report(ctx, note, input, {
        rule: 'unknown-field',
        text: words`a ${part} has no \`${name}\``,
        allowed: known.join(', '),
        hint: didYouMean(name, known),
      })
}
