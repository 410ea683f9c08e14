/**
 * Links names to numbers across notes. In: every note as read, and the calculators they use. Out: the
 * ledger as data with nothing worked yet (`work.ts` fills it in), and what each place on a page shows.
 *
 * A name's scope is its note; other notes reach it by import. Results of blocks have no entry yet.
 */
import type {
  Calculator,
  ChoiceField,
  Field,
  ListField,
  NumberField,
  TextField,
} from '../../calculators/define.ts'
import { nearestName } from '../quantity/nearest.ts'
import type { Sum } from './expression.ts'
import { readChoice } from './input.ts'
import type {
  At,
  BlockSource,
  NamedSum,
  NoteSource,
  RawInput,
  RawTable,
  RootSource,
  Use,
} from './note-source.ts'
import type { Problem } from './problems.ts'
import type {
  Expression,
  Given,
  Published,
  PublishedBlock,
  PublishedInstrument,
  PublishedNote,
  PublishedNumber,
  PublishedSource,
} from './published.ts'
import type { SiteSettings } from './site-file.ts'

/** What one place of a page shows, by its offset in the file. */
export type Shown =
  | {
      readonly type: 'number'
      readonly id: string
      readonly unit?: string
      readonly digits?: number
      readonly linked: boolean
      readonly anchor?: string
    }
  | { readonly type: 'table'; readonly ids: readonly string[] }
  | { readonly type: 'block'; readonly id: string }
  | { readonly type: 'nominal'; readonly text: string }
  | { readonly type: 'quoted'; readonly text: string; readonly source: PublishedSource }

export interface Linked {
  readonly published: Published
  /** note slug -> offset -> what is shown there. */
  readonly shown: ReadonlyMap<string, ReadonlyMap<number, Shown>>
  readonly problems: readonly Problem[]
}

type Target = { readonly note: NoteSource } & (
  | { readonly type: 'root'; readonly root: RootSource | NamedSum }
  | { readonly type: 'block'; readonly block: BlockSource }
)

export function link(
  notes: readonly NoteSource[],
  /** `readable` is false when the settings stand for a file that could not be read. */
  site: SiteSettings & { readonly readable: boolean },
  calculators: ReadonlyMap<string, Calculator>,
  knownCalculators: readonly string[],
): Linked {
  const problems: Problem[] = []
  const numbers: PublishedNumber[] = []
  const blocks: PublishedBlock[] = []
  const shown = new Map<string, Map<number, Shown>>()
  const bySlug = new Map(notes.map((note) => [note.slug, note]))
  const rootOf = new Map(
    notes.map((note) => [
      note.slug,
      new Map([...note.roots, ...note.sums].map((root) => [root.name, root])),
    ]),
  )
  const blockOf = new Map(
    notes.map((note) => [note.slug, new Map(note.blocks.map((block) => [block.name, block]))]),
  )
  const dependencies = new Map(notes.map((note) => [note.slug, new Set<string>()]))

  const report = (
    note: NoteSource,
    rule: string,
    text: string,
    at: At,
    more: Partial<Problem> = {},
  ): void => {
    problems.push({
      rule,
      level: 'error',
      text,
      file: note.file,
      line: at.line,
      column: at.column,
      ...more,
    })
  }

  const own = (note: NoteSource, name: string): Target | undefined => {
    const root = rootOf.get(note.slug)?.get(name)
    if (root !== undefined) return { type: 'root', note, root }
    const block = blockOf.get(note.slug)?.get(name)
    return block === undefined ? undefined : { type: 'block', note, block }
  }
  const ownNames = (note: NoteSource): string[] => [
    ...note.roots.map(({ name }) => name),
    ...note.sums.map(({ name }) => name),
    ...note.blocks.map(({ name }) => name),
  ]

  for (const note of notes) {
    for (const item of note.imports) {
      const other = bySlug.get(item.from)
      if (other === undefined || item.imported === '*' || own(other, item.imported) !== undefined)
        continue
      const near = nearestName(item.imported, ownNames(other))
      report(
        note,
        'unknown-name',
        `the note \`${other.file}\` has no number or block called \`${item.imported}\``,
        item,
        {
          ...(near === undefined ? {} : { hint: `did you mean \`${near}\`?` }),
        },
      )
    }
  }

  /** The id that a path means in a note, or a reported problem. */
  const resolve = (note: NoteSource, path: readonly string[], at: At): string | undefined => {
    const [head = '', ...rest] = path
    let target = own(note, head)
    let fields = rest
    if (target === undefined) {
      const item = note.imports.find(({ local }) => local === head)
      const other = item === undefined ? undefined : bySlug.get(item.from)
      // A name that is declared but unreadable has been reported where it stands.
      if (item === undefined || other === undefined) return undefined
      dependencies.get(note.slug)?.add(other.slug)
      if (item.imported === '*') {
        const [name, ...further] = rest
        if (name === undefined) {
          report(note, 'not-a-number', `\`${head}\` is a whole note; say which number of it`, at, {
            hint: ownNames(other)
              .map((known) => `\`${head}.${known}\``)
              .slice(0, 6)
              .join(', '),
          })
          return undefined
        }
        target = own(other, name)
        fields = further
        if (target === undefined) {
          const near = nearestName(name, ownNames(other))
          report(
            note,
            'unknown-name',
            `the note \`${other.file}\` has no number or block called \`${name}\``,
            at,
            {
              ...(near === undefined ? {} : { hint: `did you mean \`${head}.${near}\`?` }),
            },
          )
          return undefined
        }
      } else {
        target = own(other, item.imported)
        if (target === undefined) return undefined
      }
    }
    if (target.type === 'root') {
      if (fields.length === 0) return `${target.note.slug}/${target.root.name}`
      report(
        note,
        'not-a-block',
        `\`${target.root.name}\` is a number; it has no \`${fields.join('.')}\``,
        at,
      )
      return undefined
    }
    return resolveField(note, target.note, target.block, fields, at)
  }

  const resolveField = (
    note: NoteSource,
    other: NoteSource,
    block: BlockSource,
    fields: readonly string[],
    at: At,
  ): string | undefined => {
    const calculator = calculators.get(block.use)
    if (calculator === undefined) return undefined
    const numbersOf = [
      ...Object.entries(calculator.outputs).filter(([, { type }]) => type === 'number'),
      ...Object.entries(calculator.inputs).filter(([, { type }]) => type === 'number'),
    ].map(([name]) => name)
    const [name, ...rest] = fields
    const list = numbersOf.map((field) => `\`${block.name}.${field}\``).join(', ')
    if (name === undefined) {
      report(note, 'not-a-number', `\`${block.name}\` is a block; say which number of it`, at, {
        allowed: list,
      })
      return undefined
    }
    const id = `${other.slug}/${block.name}.${fields.join('.')}`
    const output = calculator.outputs[name]
    const input = calculator.inputs[name]
    if (output?.type === 'number' && rest.length === 0) return id
    if (input?.type === 'number' && rest.length === 0) {
      if (block.given[name] !== undefined || input.assume !== undefined) return id
      report(note, 'not-given', `\`${block.name}\` was not given \`${name}\``, at)
      return undefined
    }
    const [index, column, ...more] = rest
    const columns =
      output?.type === 'table' ? output.columns : input?.type === 'list' ? input.fields : undefined
    if (columns !== undefined && index !== undefined && column !== undefined && more.length === 0) {
      if (/^\d+$/.test(index) && columns[column]?.type === 'number') return id
    }
    if (columns !== undefined) {
      report(
        note,
        'not-a-number',
        `\`${block.name}.${name}\` is a table; say which row and column of it`,
        at,
        {
          hint: `such as \`${block.name}.${name}[0].${Object.entries(columns).find(([, { type }]) => type === 'number')?.[0] ?? ''}\``,
        },
      )
      return undefined
    }
    if (output !== undefined || input !== undefined) {
      report(note, 'not-a-number', `\`${block.name}.${name}\` is a word, not a number`, at, {
        allowed: list,
      })
      return undefined
    }
    const near = nearestName(name, numbersOf)
    report(note, 'unknown-field', `the calculator \`${block.use}\` has no \`${name}\``, at, {
      allowed: list,
      ...(near === undefined ? {} : { hint: `did you mean \`${block.name}.${near}\`?` }),
    })
    return undefined
  }

  const resolveSum = (note: NoteSource, sum: Sum): Expression | undefined => {
    if (typeof sum === 'number') return sum
    if ('path' in sum) {
      const ref = resolve(note, sum.path, sum)
      return ref === undefined ? undefined : { ref }
    }
    if (sum.op === 'negate') {
      const inner = resolveSum(note, sum.of)
      return inner === undefined ? undefined : { op: 'negate', of: inner }
    }
    const left = resolveSum(note, sum.left)
    const right = resolveSum(note, sum.right)
    return left === undefined || right === undefined ? undefined : { op: sum.op, left, right }
  }

  const sourceOf = (
    note: NoteSource,
    key: string,
    at: At,
    where: string | undefined,
  ): PublishedSource => {
    const known = site.sources[key]
    if (known === undefined && site.readable && !/\s/.test(key)) {
      const near = nearestName(key, Object.keys(site.sources))
      report(note, 'unknown-source', `\`site.yaml\` has no source called \`${key}\``, at, {
        hint:
          near === undefined
            ? 'add it under `sources:`, or write its title out'
            : `did you mean \`${near}\`?`,
      })
    }
    return {
      key,
      title: known?.title ?? key,
      ...defined({ edition: known?.edition, read: known?.read, url: known?.url, at: where }),
    }
  }
  const instrumentOf = (note: NoteSource, key: string, at: At): PublishedInstrument => {
    const known = site.instruments[key]
    if (known === undefined && site.readable && !/\s/.test(key)) {
      const near = nearestName(key, Object.keys(site.instruments))
      report(note, 'unknown-instrument', `\`site.yaml\` has no instrument called \`${key}\``, at, {
        hint:
          near === undefined
            ? 'add it under `instruments:`, or say what it is in words'
            : `did you mean \`${near}\`?`,
      })
    }
    return { key, title: known?.title ?? key, ...defined({ plusMinus: known?.plusMinus }) }
  }

  for (const note of notes) {
    const places = new Map<number, Shown>()
    shown.set(note.slug, places)
    for (const root of note.roots) {
      const replaces =
        root.replaces === undefined ? undefined : plainRef(note, root.replaces, root, 'replaces')
      const checks =
        root.checks === undefined ? undefined : plainRef(note, root.checks, root, 'checks')
      const instrument =
        root.instrument === undefined ? null : instrumentOf(note, root.instrument, root)
      const plusMinus = root.plusMinus ?? instrument?.plusMinus
      numbers.push({
        ...blank(note, root.name, root.valueAt),
        kind: root.kind,
        firmness: root.kind,
        typed: root.value,
        instrument,
        source:
          root.source === undefined
            ? null
            : sourceOf(note, root.source, root, root.kind === 'rated' ? root.at : undefined),
        date: root.on ?? note.meta.date,
        ...defined({
          at: root.kind === 'rated' ? undefined : root.at,
          because: root.because,
          settle: root.settle,
          plusMinusShown: plusMinus,
          replaces,
          checks,
        }),
      })
    }
    for (const named of note.sums) {
      const expression = resolveSum(note, named.sum)
      if (expression !== undefined)
        numbers.push({
          ...blank(note, named.name, named),
          kind: 'worked',
          expression,
          rests: refsOf(expression),
        })
    }
    for (const block of note.blocks) linkBlock(note, block)
    for (const use of note.uses) {
      const made = linkUse(note, use)
      if (made !== undefined) places.set(use.offset, made)
    }
  }

  function plainRef(note: NoteSource, sum: Sum, at: At, attribute: string): string | undefined {
    const expression = resolveSum(note, sum)
    if (expression === undefined) return undefined
    if (typeof expression === 'object' && 'ref' in expression) return expression.ref
    report(note, 'not-a-name', `\`${attribute}\` takes one name, not a sum`, at)
    return undefined
  }

  function linkUse(note: NoteSource, use: Use): Shown | undefined {
    switch (use.type) {
      case 'root':
        return {
          type: 'number',
          id: `${note.slug}/${use.name}`,
          linked: use.linked,
          anchor: use.name,
        }
      case 'table':
        return { type: 'table', ids: use.names.map((name) => `${note.slug}/${name}`) }
      case 'block':
        return { type: 'block', id: `${note.slug}/${use.name}` }
      case 'nominal':
        return { type: 'nominal', text: use.text }
      case 'quoted':
        return {
          type: 'quoted',
          text: use.text,
          source: sourceOf(note, use.source, use, undefined),
        }
      case 'sum':
      case 'show': {
        const expression = resolveSum(note, use.sum)
        if (expression === undefined) return undefined
        const name = use.type === 'show' ? use.name : undefined
        return {
          type: 'number',
          id:
            name === undefined
              ? numberFor(note, expression, use.text, use)
              : `${note.slug}/${name}`,
          linked: use.linked,
          ...(use.type === 'show'
            ? defined({ unit: use.unit, digits: use.digits, anchor: name })
            : {}),
        }
      }
    }
  }

  /** The number an expression is: the one it names, or a sum with an entry of its own. */
  function numberFor(note: NoteSource, expression: Expression, text: string, at: At): string {
    if (typeof expression === 'object' && 'ref' in expression) return expression.ref
    const name = text.replace(/\s+/g, ' ')
    const id = `${note.slug}/${name}`
    if (!numbers.some((number) => number.id === id))
      numbers.push({
        ...blank(note, name, at),
        kind: 'worked',
        expression,
        rests: refsOf(expression),
      })
    return id
  }

  function linkBlock(note: NoteSource, block: BlockSource): void {
    const calculator = calculators.get(block.use)
    if (calculator === undefined) {
      const near = nearestName(block.use, knownCalculators)
      report(note, 'unknown-calculator', `there is no calculator \`${block.use}\``, block.useAt, {
        hint:
          near === undefined
            ? `there are: ${knownCalculators.join(', ')}`
            : `did you mean \`${near}\`?`,
      })
      return
    }
    const id = `${note.slug}/${block.name}`
    const given: Record<string, Given> = {}
    const raw: Record<string, RawInput> = { ...block.given }
    for (const table of block.tables) {
      const key = listOf(calculator, table)
      if (key === undefined) {
        const lists = Object.entries(calculator.inputs).filter(([, { type }]) => type === 'list')
        report(
          note,
          'bad-table',
          `the table’s columns (${table.headings.join(', ')}) fit no list of \`${block.use}\``,
          table,
          {
            allowed:
              lists.length === 0
                ? `\`${block.use}\` takes no list of parts`
                : lists
                    .map(
                      ([name, field]) =>
                        `${name}: ${field.type === 'list' ? Object.keys(field.fields).join(', ') : ''}`,
                    )
                    .join('; '),
          },
        )
      } else if (raw[key] !== undefined)
        report(
          note,
          'doubled-list',
          `\`${key}\` is given twice, as an attribute and as a table`,
          table,
        )
      else
        raw[key] = {
          type: 'rows',
          rows: table.rows.map((row) => byField(calculator, key, row)),
          line: table.line,
          column: table.column,
        }
    }
    for (const [name, input] of Object.entries(raw)) {
      if (calculator.inputs[name] !== undefined) continue
      const near = nearestName(name, Object.keys(calculator.inputs))
      report(
        note,
        'unknown-field',
        `the calculator \`${block.use}\` has no input \`${name}\``,
        input,
        {
          allowed: Object.keys(calculator.inputs).join(', '),
          ...(near === undefined ? {} : { hint: `did you mean \`${near}\`?` }),
        },
      )
    }
    for (const [name, field] of Object.entries(calculator.inputs)) {
      const made = linkField(note, block, `${block.name}.${name}`, name, field, raw[name], id)
      if (made !== undefined) given[name] = made
    }
    blocks.push({
      id,
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

  function linkField(
    note: NoteSource,
    block: BlockSource,
    path: string,
    name: string,
    field: Field,
    raw: RawInput | undefined,
    id: string,
  ): Given | undefined {
    if (raw?.type === 'unread') return undefined
    if (field.type === 'list') return linkList(note, block, path, name, field, raw, id)
    if (raw?.type === 'rows') {
      report(
        note,
        'not-a-list',
        `\`${name}\` is one ${field.type === 'number' ? 'number' : 'word'}, not a list`,
        raw,
      )
      return undefined
    }
    if (raw === undefined) return leftOut(note, block, path, name, field, id)
    if (field.type === 'number') {
      if (raw.type === 'text') {
        numbers.push({
          ...blank(note, path, raw),
          kind: field.choice === true ? 'chosen' : 'assumed',
          firmness: field.choice === true ? 'chosen' : 'assumed',
          block: id,
          of: field.of,
          typed: raw.text,
          because:
            field.choice === true
              ? 'chosen in this block'
              : 'typed into this block, without a source',
        })
        return { type: 'number', id: `${note.slug}/${path}`, how: 'literal' }
      }
      const expression = resolveSum(note, raw.sum)
      if (expression === undefined) return undefined
      numbers.push({
        ...blank(note, path, raw),
        kind: 'worked',
        block: id,
        of: field.of,
        expression,
        rests: refsOf(expression),
      })
      return { type: 'number', id: `${note.slug}/${path}`, how: 'reference' }
    }
    if (raw.type === 'sum') {
      report(note, 'not-a-word', `\`${name}\` takes a word, not a number`, raw, wordsOf(field))
      return undefined
    }
    return linkWord(note, name, field, raw)
  }

  function linkWord(
    note: NoteSource,
    name: string,
    field: ChoiceField | TextField,
    raw: Extract<RawInput, { type: 'text' }>,
  ): Given | undefined {
    if (field.type === 'text') return { type: 'word', value: raw.text, how: 'literal' }
    const read = readChoice(field, raw.text)
    if (read.ok) return { type: 'word', value: String(read.value), how: 'literal' }
    const { rule, text, allowed, hint } = read
    report(note, rule, `\`${name}\`: ${text}`, raw, defined({ allowed, hint }))
    return undefined
  }

  function leftOut(
    note: NoteSource,
    block: BlockSource,
    path: string,
    name: string,
    field: NumberField | ChoiceField | TextField,
    id: string,
  ): Given | undefined {
    if (field.type === 'number' && field.assume !== undefined) {
      numbers.push({
        ...blank(note, path, block),
        kind: 'assumed',
        firmness: 'assumed',
        block: id,
        of: field.of,
        typed: assumedText(field.assume.value, field.units[0]),
        because: field.assume.because,
      })
      return { type: 'number', id: `${note.slug}/${path}`, how: 'assumed-default' }
    }
    if (field.type === 'choice' && field.assume !== undefined)
      return { type: 'word', value: field.assume.value, how: 'assumed-default' }
    if (field.optional === true) return undefined
    report(
      note,
      'missing-input',
      `\`${block.name}\` does not say \`${name}\`: ${lower(field.help)}`,
      block,
      {
        ...(field.type === 'number'
          ? {
              hint: `\`${name}="${assumedText(field.usual[0], field.units[0])}"\` or \`${name}={aName}\``,
            }
          : wordsOf(field)),
      },
    )
    return undefined
  }

  function linkList(
    note: NoteSource,
    block: BlockSource,
    path: string,
    name: string,
    field: ListField,
    raw: RawInput | undefined,
    id: string,
  ): Given | undefined {
    if (raw === undefined) {
      if (field.optional !== true)
        report(
          note,
          'missing-input',
          `\`${block.name}\` has no list of ${name}: ${lower(field.help)}`,
          block,
          {
            hint: `a table inside <Calc> with the columns ${Object.keys(field.fields).join(', ')}`,
          },
        )
      return undefined
    }
    if (raw.type !== 'rows') {
      report(note, 'not-a-list', `\`${name}\` is a list: one row for each ${field.row}`, raw, {
        hint: `a table inside <Calc> with the columns ${Object.keys(field.fields).join(', ')}`,
      })
      return undefined
    }
    const [least, most] = field.rows
    if (raw.rows.length < least || raw.rows.length > most) {
      report(note, 'list-length', `\`${name}\` has ${raw.rows.length} rows`, raw, {
        allowed: `${least} to ${most} rows, one for each ${field.row}`,
      })
      return undefined
    }
    const rows = raw.rows.map((row, index) => {
      const made: Record<string, Given> = {}
      for (const [key, input] of Object.entries(row)) {
        if (field.fields[key] !== undefined) continue
        const near = nearestName(key, Object.keys(field.fields))
        report(note, 'unknown-field', `a ${field.row} has no \`${key}\``, input, {
          allowed: Object.keys(field.fields).join(', '),
          ...(near === undefined ? {} : { hint: `did you mean \`${near}\`?` }),
        })
      }
      for (const [key, inner] of Object.entries(field.fields)) {
        const cell = linkField(note, block, `${path}.${index}.${key}`, key, inner, row[key], id)
        if (cell !== undefined) made[key] = cell
      }
      return made
    })
    return { type: 'rows', rows }
  }

  const publishedNotes: PublishedNote[] = notes.map((note) => ({
    slug: note.slug,
    title: note.meta.title,
    date: note.meta.date,
    phase: note.meta.phase,
    status: note.meta.status,
    ...defined({ changed: note.meta.changed, summary: note.meta.summary }),
    file: note.file,
    restsOn: [...(dependencies.get(note.slug) ?? [])].sort(),
  }))
  const { title, description, vehicle, notice, author, units } = site
  return {
    published: {
      format: 1,
      site: { title, description, vehicle, units, ...defined({ notice, author }) },
      notes: publishedNotes,
      numbers,
      blocks,
    },
    shown,
    problems: [...problems],
  }

  function listOf(calculator: Calculator, table: RawTable): string | undefined {
    const fits = Object.entries(calculator.inputs).filter(
      ([, field]) =>
        field.type === 'list' &&
        table.headings.every((heading) => fieldNamed(field, heading) !== undefined),
    )
    return fits.length === 1 ? fits[0]?.[0] : undefined
  }
}

/** A column may be headed by the field's name or its label. */
function fieldNamed(list: ListField, heading: string): string | undefined {
  const fold = (text: string): string =>
    text
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[\s_-]+/g, '')
  return Object.entries(list.fields).find(
    ([name, field]) => fold(name) === fold(heading) || fold(field.label) === fold(heading),
  )?.[0]
}

function byField(
  calculator: Calculator,
  key: string,
  row: Readonly<Record<string, RawInput>>,
): Record<string, RawInput> {
  const list = calculator.inputs[key]
  if (list?.type !== 'list') return { ...row }
  return Object.fromEntries(
    Object.entries(row).map(([heading, raw]) => [fieldNamed(list, heading) ?? heading, raw]),
  )
}

export function refsOf(expression: Expression): string[] {
  if (typeof expression === 'number') return []
  if ('ref' in expression) return [expression.ref]
  if (expression.op === 'negate') return refsOf(expression.of)
  return [...new Set([...refsOf(expression.left), ...refsOf(expression.right)])].sort()
}

function blank(note: NoteSource, name: string, at: At): PublishedNumber {
  return {
    id: `${note.slug}/${name}`,
    note: note.slug,
    name,
    kind: 'worked',
    firmness: 'reading',
    value: null,
    unit: '',
    vector: [0, 0, 0, 0, 0, 0, 0],
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
    date: note.meta.date,
    file: note.file,
    line: at.line,
    column: at.column,
    now: null,
  }
}

const assumedText = (value: number, unit: string): string =>
  unit === '' ? String(value) : `${value} ${unit}`

const lower = (text: string): string =>
  text.charAt(0).toLowerCase() + text.slice(1).replace(/\.$/, '')

function wordsOf(field: Field): { allowed?: string } {
  return field.type === 'choice' ? { allowed: Object.keys(field.options).join(', ') } : {}
}

type Defined<T> = { [K in keyof T]?: Exclude<T[K], undefined> }
/** Leaves out what is undefined. */
export function defined<T extends object>(values: T): Defined<T> {
  const made: Defined<T> = {}
  for (const key in values) {
    const value = values[key]
    if (value !== undefined) made[key] = value as Exclude<T[typeof key], undefined>
  }
  return made
}
