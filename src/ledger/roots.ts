/**
 * The ledger without what working it gives: what was typed, what rests on what, where it stands. A page
 * hands this to its reader's browser, which works the rest itself. In and out: a ledger as data; what
 * comes back works to the same values, results and verdicts, digit by digit.
 */
import { blankNumber } from './blank.ts'
import { refsOf } from './refs.ts'
import type { Published, PublishedBlock, PublishedNumber } from './published.ts'

type RootNumber = Partial<PublishedNumber> & Pick<PublishedNumber, 'note' | 'name'>
type RootBlock = Pick<PublishedBlock, 'note' | 'name' | 'title' | 'calculator' | 'given' | 'line'> &
  Partial<Pick<PublishedBlock, 'accepted'>>

export interface Roots extends Pick<Published, 'format' | 'site' | 'notes'> {
  readonly numbers: readonly RootNumber[]
  readonly blocks: readonly RootBlock[]
}

/** What a working writes, or what follows from the name and the note. */
const worked = new Set<string>([
  'id',
  'firmness',
  'value',
  'unit',
  'vector',
  'flavour',
  'shown',
  'shownOther',
  'display',
  'displayOther',
  'figures',
  'plusMinus',
  'now',
  'file',
  'column',
])

export function rootsOf({ format, site, notes, numbers, blocks }: Published): Roots {
  return {
    format,
    site,
    notes,
    numbers: numbers.filter(({ calculator }) => calculator === null).map(rootOf),
    blocks: blocks.map(({ note, name, title, calculator, given, line, accepted }) => ({
      note,
      name,
      title,
      calculator,
      given,
      line,
      ...(accepted === null ? {} : { accepted }),
    })),
  }
}

const known = new WeakMap<PublishedNumber, RootNumber>()

/** Many pages of a site hand out the same number. */
function rootOf(number: PublishedNumber): RootNumber {
  const root = known.get(number) ?? rootNumber(number)
  known.set(number, root)
  return root
}

function rootNumber(number: PublishedNumber): RootNumber {
  const { note, name, ...rest } = number
  const blank = new Map(Object.entries(expected({ ...number, date: '', line: 1 })))
  const kept = Object.entries(rest).filter(
    ([key, value]) =>
      !worked.has(key) &&
      !(key === 'of' && number.typed === undefined && number.block === null) &&
      JSON.stringify(value) !== JSON.stringify(blank.get(key)),
  )
  return { note, name, ...Object.fromEntries(kept) }
}

type Known = Parameters<typeof blankNumber>[0] & Pick<PublishedNumber, 'expression'>

/** What a number has when nothing else is said of it. `loop.bore` goes into the block `loop`. */
function expected(known: Known): PublishedNumber {
  const { note, name, expression } = known
  const block = /^([\p{L}_$][\p{L}\p{N}_$]*)(?:\.[\p{L}\p{N}_$]+)+$/u.exec(name)?.[1]
  return {
    ...blankNumber(known),
    block: block === undefined ? null : `${note}/${block}`,
    rests: expression === undefined ? [] : refsOf(expression),
  }
}

/** The ledger again, with nothing worked. */
export function ledgerOf({ format, site, notes, numbers, blocks }: Roots): Published {
  const files = new Map(notes.map(({ slug, file }) => [slug, file]))
  const fileOf = (note: string): string => files.get(note) ?? `${note}.mdx`
  return {
    format,
    site,
    notes,
    numbers: numbers.map((number) => {
      const { note, date = '', line = 1 } = number
      return {
        ...expected({ ...number, date, file: fileOf(note), line, column: 1 }),
        ...number,
      }
    }),
    blocks: blocks.map(({ accepted = null, ...block }) => ({
      ...block,
      id: `${block.note}/${block.name}`,
      accepted,
      inputs: {},
      outputs: {},
      verdict: 'unknown',
      provisional: false,
      findings: [],
      working: [],
      hazards: [],
      file: fileOf(block.note),
    })),
  }
}
