/**
 * A number of the ledger of which only name and place are known. Everything else is as if nothing had
 * been said; whoever makes it writes over that what is known.
 */
import { none } from '../quantity/vector.ts'
import type { PublishedNumber } from './published.ts'

type NameAndPlace = Pick<PublishedNumber, 'note' | 'name' | 'date' | 'file' | 'line' | 'column'>

export function blankNumber(given: NameAndPlace): PublishedNumber {
  const { note, name, date, file, line, column } = given
  return {
    id: `${note}/${name}`,
    note,
    name,
    kind: 'worked',
    firmness: 'reading',
    value: null,
    unit: '',
    vector: none,
    flavour: 'amount',
    shown: '',
    display: '',
    figures: null,
    plusMinus: null,
    rests: [],
    calculator: null,
    block: null,
    source: null,
    instrument: null,
    date,
    file,
    line,
    column,
    now: null,
  }
}
