/** What is wrong with the texts of a form, in the words of the build. */
import type { Fields } from '../../calculators/define.ts'
import { mayBeLeftOut, readField, slipWords } from '../ledger/input.ts'
import type { Single, Texts } from './texts.ts'
import { words } from '../words/words.ts'

/** Said of one control: `error` stops the working, `remark` does not. */
export interface Said {
  readonly level: 'error' | 'remark'
  readonly text: string
}

function saidOf(field: Single, text: string): Said | undefined {
  if (text.trim() === '') {
    return mayBeLeftOut(field)
      ? undefined
      : { level: 'error', text: words`Something is needed here.` }
  }
  const read = readField(field, text)
  if (!read.ok) return { level: 'error', text: slipWords(read).replaceAll('`', '') }
  const remarks = [read.quantity?.remark, read.unusual].filter((one) => one !== undefined)
  return remarks.length === 0
    ? undefined
    : { level: 'remark', text: remarks.join('; ').replaceAll('`', '') }
}

/** What there is to say of each control, by its name; a control without fault is absent. */
export function judge(fields: Fields, texts: Texts): ReadonlyMap<string, Said> {
  const said = new Map<string, Said>()
  const note = (field: Single, name: string, text: string) => {
    const one = saidOf(field, text)
    if (one !== undefined) said.set(name, one)
  }
  for (const [key, field] of Object.entries(fields)) {
    const text = texts[key]
    if (field.type !== 'list') note(field, key, typeof text === 'string' ? text : '')
    else if (typeof text === 'object') {
      for (const [index, row] of text.entries()) {
        for (const [column, cell] of Object.entries(field.fields)) {
          note(cell, `${key}.${index}.${column}`, row[column] ?? '')
        }
      }
    }
  }
  return said
}
