/**
 * Reads one note: from its syntax tree to its numbers, blocks and uses of names.
 *
 * Nothing is resolved and nothing computed here. Every problem is collected with its place; the tree
 * is not changed, and nothing of it is kept but places and texts, since the page changes it later.
 */
import GithubSlugger from 'github-slugger'
import { toString } from 'mdast-util-to-string'
import type { Heading, Root, Table } from 'mdast'
import type { MdxJsxAttribute, MdxJsxFlowElement, MdxJsxTextElement } from 'mdast-util-mdx'
import type { Node } from 'unist'
import { visitParents } from 'unist-util-visit-parents'
import { nearestName } from '../quantity/nearest.ts'
import {
  anyNode,
  bindings,
  freeNames,
  isNode,
  onlyExpression,
  placeOf,
  readSum,
  type AnyNode,
  type Sum,
} from './expression.ts'
import { readName } from './names.ts'
import { pictureFault } from './pictures.ts'
import type {
  At,
  BlockSource,
  NamedSum,
  NoteImport,
  NoteSource,
  RawInput,
  RawTable,
  RootSource,
  Use,
} from './note-source.ts'
import { noteOwnNames } from './names.ts'
import type { Problem } from './problems.ts'
import type { NoteMeta } from './site-file.ts'

type Element = MdxJsxFlowElement | MdxJsxTextElement

const rootKinds = {
  Reading: 'reading',
  Rated: 'rated',
  Assumed: 'assumed',
  Chosen: 'chosen',
} as const
const rootAttributes: Readonly<
  Record<string, { needs: readonly string[]; may: readonly string[] }>
> = {
  Reading: { needs: ['value', 'with'], may: ['id', 'plusMinus', 'at', 'on', 'replaces', 'checks'] },
  Rated: { needs: ['value', 'source'], may: ['id', 'plusMinus', 'at', 'on', 'replaces', 'checks'] },
  Assumed: {
    needs: ['value', 'because'],
    may: ['id', 'plusMinus', 'settle', 'on', 'replaces', 'checks'],
  },
  Chosen: { needs: ['value', 'because'], may: ['id', 'on', 'replaces', 'checks'] },
}
const whyNeeded: Readonly<Record<string, string>> = {
  value: 'its value with a unit: `value="1.5 A"`',
  with: 'the instrument it was read with: `with="clampMeter"`',
  source: 'where it was read: `source="controllerSheet"`, and `at="p. 7"`',
  because: 'the reason: `because="…"`',
}
export const kitElements = [
  'Reading',
  'Rated',
  'Assumed',
  'Chosen',
  'Show',
  'Nominal',
  'Quoted',
  'Calc',
]

interface Attribute extends At {
  readonly name: string
  readonly value:
    | { type: 'text'; text: string }
    | { type: 'braces'; node: AnyNode; source: string }
    | { type: 'none' }
}

export interface ReadOptions {
  readonly slug: string
  readonly file: string
  readonly path: string
  readonly raw: string
  readonly meta: NoteMeta
  /** Slugs of all notes, by path relative to the notes' folder. */
  readonly slugOf: (specifier: string) => string | undefined
  readonly knownNotes: readonly string[]
  /** Every file of the content folder, by its path there. */
  readonly files: readonly string[]
}

export function readNote(tree: Root, options: ReadOptions): NoteSource {
  const { slug, file, path, raw, meta } = options
  const problems: Problem[] = []
  const imports: NoteImport[] = []
  const roots: RootSource[] = []
  const sums: NamedSum[] = []
  const blocks: BlockSource[] = []
  const uses: Use[] = []
  const bound = new Set<string>(noteOwnNames)
  const headings = new Map<string, At>()
  const slugger = new GithubSlugger()
  const anonymous: Record<string, number> = {}

  const report = (rule: string, text: string, at: At, more: Partial<Problem> = {}): void => {
    problems.push({ rule, level: 'error', text, file, line: at.line, column: at.column, ...more })
  }
  const start = (node: Node) => ({
    line: node.position?.start.line ?? 1,
    column: node.position?.start.column ?? 1,
    offset: node.position?.start.offset ?? 0,
  })

  // Imports and exports first: they may stand below their use.
  for (const node of tree.children) {
    if (node.type !== 'mdxjsEsm' || !node.data?.estree) continue
    for (const statement of node.data.estree.body.map(anyNode)) {
      const from = isNode(statement.source) ? String(statement.source.value) : undefined
      if (statement.type === 'ImportDeclaration' && from?.endsWith('.mdx'))
        readNoteImport(statement, from)
      else for (const name of bindings(statement)) bound.add(name)
    }
  }

  function readNoteImport(statement: AnyNode, from: string): void {
    const target = options.slugOf(from)
    if (target === undefined) {
      const near = nearestName(from.replace(/^\.\//, ''), options.knownNotes)
      report('unknown-note', `there is no note \`${from}\``, placeOf(statement), {
        ...(near === undefined ? {} : { hint: `did you mean \`./${near}\`?` }),
      })
    }
    const specifiers: unknown = statement.specifiers
    if (!Array.isArray(specifiers)) return
    for (const specifier of specifiers.filter(isNode)) {
      const local = isNode(specifier.local) ? String(specifier.local.name) : ''
      if (specifier.type === 'ImportDefaultSpecifier') {
        bound.add(local)
        continue
      }
      const imported =
        specifier.type === 'ImportNamespaceSpecifier'
          ? '*'
          : isNode(specifier.imported)
            ? String(specifier.imported.name ?? specifier.imported.value)
            : ''
      if (imported === 'Content' || noteOwnNames.has(imported)) bound.add(local)
      else if (target !== undefined)
        imports.push({ local, imported, from: target, ...placeOf(specifier) })
    }
  }

  const declared = new Map<string, At>()
  /** A name nobody can use in braces, for a number without one or with one that was refused. */
  const unnamed = (element: string): string => {
    const count = (anonymous[element] ?? 0) + 1
    anonymous[element] = count
    return `${element.toLowerCase()}-${count}`
  }
  const declare = (attribute: Attribute | undefined, element: string, at: At): string => {
    if (attribute === undefined) return unnamed(element)
    if (attribute.value.type !== 'text') {
      report('bad-name', 'an `id` is a plain text: `id="pumpDraw"`', attribute)
      return unnamed(element)
    }
    const read = readName(attribute.value.text)
    if ('why' in read) {
      report(
        'bad-name',
        read.why,
        attribute,
        read.hint === undefined ? {} : { hint: `\`${read.hint}\` would do` },
      )
      return unnamed(element)
    }
    const before = declared.get(read.name)
    if (before !== undefined) {
      report('doubled-name', `the name \`${read.name}\` is already taken in this note`, attribute, {
        hint: 'two numbers need two names',
        also: [{ file, ...before }],
      })
      return unnamed(element)
    }
    declared.set(read.name, { line: at.line, column: at.column })
    return read.name
  }

  const attributesOf = (element: Element): Attribute[] => {
    const list: Attribute[] = []
    for (const attribute of element.attributes) {
      if (attribute.type === 'mdxJsxExpressionAttribute') {
        report(
          'spread',
          `\`{…}\` inside <${element.name ?? ''}>: write each attribute out`,
          start(attribute),
        )
        continue
      }
      list.push(readAttribute(attribute, start(element)))
    }
    return list
  }

  function readAttribute(attribute: MdxJsxAttribute, fallback: At): Attribute {
    const at = attribute.position === undefined ? fallback : start(attribute)
    const { value } = attribute
    if (value === null || value === undefined)
      return { name: attribute.name, value: { type: 'none' }, ...at }
    if (typeof value === 'string')
      return { name: attribute.name, value: { type: 'text', text: value }, ...at }
    const program = value.data?.estree
    const node = program ? onlyExpression(anyNode(program)) : undefined
    if (node === undefined) return { name: attribute.name, value: { type: 'none' }, ...at }
    return {
      name: attribute.name,
      value: { type: 'braces', node, source: value.value.trim() },
      ...at,
    }
  }

  const sumFrom = (node: AnyNode): Sum | undefined => {
    const read = readSum(node)
    if ('sum' in read) return read.sum
    for (const { line, column, rule, text, ...more } of read.faults)
      report(rule, text, { line, column }, more)
    return undefined
  }

  const knownNames = (): string[] => [...declaredLater, ...imports.map(({ local }) => local)]

  /** The ledger's, MDX's own, or (reported) neither. */
  const sortNames = (node: AnyNode, where: string): 'ledger' | 'mdx' | 'bad' => {
    const free = freeNames(node)
    const unknown = free.filter(({ name }) => !isLedgers(name) && !bound.has(name))
    for (const { name, line, column } of unknown) {
      const near = nearestName(name, [...knownNames(), ...bound])
      report(
        'unknown-name',
        `no number, block or import is called \`${name}\``,
        { line, column },
        {
          hint:
            near === undefined
              ? 'give a number this name with `id`, or import it from the note that has it'
              : `did you mean \`${near}\`?`,
        },
      )
    }
    if (unknown.length > 0) return 'bad'
    const ledgers = free.filter(({ name }) => isLedgers(name))
    const [first] = ledgers
    if (first === undefined) return 'mdx'
    if (ledgers.length < free.length) {
      const other = free.find(({ name }) => !isLedgers(name))
      report(
        'mixed-names',
        `\`${first.name}\` is a number of the ledger and \`${other?.name ?? ''}\` is not: one ${where} never mixes the two`,
        first,
      )
      return 'bad'
    }
    return 'ledger'
  }

  const rawInput = (attribute: Attribute): RawInput => {
    const at = { line: attribute.line, column: attribute.column }
    if (attribute.value.type === 'text') return { type: 'text', text: attribute.value.text, ...at }
    if (attribute.value.type === 'none') return { type: 'text', text: 'yes', ...at }
    return rawFromNode(attribute.value.node, attribute.value.source, at)
  }

  function rawFromNode(node: AnyNode, source: string, at: At): RawInput {
    if (node.type === 'Literal' && typeof node.value === 'string')
      return { type: 'text', text: node.value, ...at }
    if (node.type === 'Literal' && typeof node.value === 'boolean')
      return { type: 'text', text: node.value ? 'yes' : 'no', ...at }
    if (
      node.type === 'TemplateLiteral' &&
      Array.isArray(node.expressions) &&
      node.expressions.length === 0
    ) {
      const quasis: unknown = node.quasis
      const first: unknown = Array.isArray(quasis) ? quasis[0] : undefined
      const value: unknown = isNode(first) ? first.value : undefined
      if (typeof value === 'object' && value !== null && 'cooked' in value)
        return { type: 'text', text: String(value.cooked), ...at }
    }
    if (node.type === 'ArrayExpression' || node.type === 'ObjectExpression') {
      const list: unknown = node.type === 'ArrayExpression' ? node.elements : [node]
      const rows: Record<string, RawInput>[] = []
      for (const item of Array.isArray(list) ? list : []) {
        if (!isNode(item) || item.type !== 'ObjectExpression') {
          report(
            'bad-list',
            'a list of parts is written `[{ name: "…", length: "2 m" }, …]`',
            isNode(item) ? placeOf(item) : at,
          )
          continue
        }
        const row: Record<string, RawInput> = {}
        const properties: unknown = item.properties
        for (const property of Array.isArray(properties) ? properties.filter(isNode) : []) {
          const key = isNode(property.key) ? String(property.key.name ?? property.key.value) : ''
          const value = property.value
          if (property.type !== 'Property' || property.computed === true || !isNode(value)) {
            report(
              'bad-list',
              'a part is written `{ name: "…", length: "2 m" }`, each field with its value',
              placeOf(property),
            )
            continue
          }
          row[key] = rawFromNode(value, key, placeOf(value))
        }
        rows.push(row)
      }
      return { type: 'rows', rows, ...at }
    }
    const sum = sortNames(node, 'value') === 'bad' ? undefined : sumFrom(node)
    return sum === undefined ? { type: 'unread', ...at } : { type: 'sum', sum, source, ...at }
  }

  const readTable = (table: Table): RawTable => {
    const [head, ...body] = table.children
    const headings = (head?.children ?? []).map((cell) => toString(cell).normalize('NFKC').trim())
    const rows = body.map((line) => {
      const row: Record<string, RawInput> = {}
      line.children.forEach((cell, index) => {
        const heading = headings[index]
        if (heading === undefined) return
        const at = start(cell)
        const [only] = cell.children
        if (cell.children.length === 1 && only?.type === 'mdxTextExpression' && only.data?.estree) {
          const node = onlyExpression(anyNode(only.data.estree))
          row[heading] =
            node === undefined
              ? { type: 'unread', ...at }
              : rawFromNode(node, only.value.trim(), start(only))
          return
        }
        const text = toString(cell).trim()
        if (text !== '') row[heading] = { type: 'text', text, ...at }
      })
      return row
    })
    return { headings, rows, ...start(table) }
  }

  const contentOf = (element: Element): { tables: Table[]; other: boolean } => {
    const tables = element.children.filter((child): child is Table => child.type === 'table')
    const other = element.children.some(
      (child) =>
        child.type !== 'table' &&
        !(
          child.type === 'paragraph' &&
          toString(child).trim() === '' &&
          child.children.length === 0
        ) &&
        !(child.type === 'text' && child.value.trim() === ''),
    )
    return { tables, other }
  }

  const readRoot = (element: Element, name: keyof typeof rootKinds, linked: boolean): void => {
    const at = start(element)
    const attributes = attributesOf(element)
    const known = rootAttributes[name] ?? { needs: [], may: [] }
    const all = [...known.needs, ...known.may]
    for (const attribute of attributes) {
      if (all.includes(attribute.name)) continue
      const near = nearestName(attribute.name, all)
      report('unknown-attribute', `<${name}> has no \`${attribute.name}\``, attribute, {
        allowed: all.join(', '),
        ...(near === undefined ? {} : { hint: `did you mean \`${near}\`?` }),
      })
    }
    const get = (key: string): Attribute | undefined =>
      attributes.find((attribute) => attribute.name === key)
    const text = (key: string): string | undefined => {
      const attribute = get(key)
      if (attribute === undefined) return undefined
      if (attribute.value.type === 'text') return attribute.value.text.trim()
      report(
        'not-text',
        key === 'value'
          ? `a <${name}> is given, not worked out: its \`value\` is a text with a unit`
          : `\`${key}\` is a text in quotes`,
        attribute,
        key === 'value' ? { hint: `\`value="2.4 m"\`; a sum needs no element: \`{a + b}\`` } : {},
      )
      return undefined
    }
    const sum = (key: 'replaces' | 'checks'): Sum | undefined => {
      const attribute = get(key)
      if (attribute === undefined) return undefined
      if (attribute.value.type !== 'braces') {
        report('not-a-name', `\`${key}\` takes a name in braces: \`${key}={pump.flow}\``, attribute)
        return undefined
      }
      if (sortNames(attribute.value.node, 'value') !== 'ledger') return undefined
      return sumFrom(attribute.value.node)
    }
    const on = text('on')
    if (on !== undefined && !/^\d{4}-\d{2}-\d{2}$/.test(on))
      report('bad-date', `\`on="${on}"\` is not a date`, get('on') ?? at, {
        hint: 'a date is written YYYY-MM-DD, such as 2026-03-14',
      })
    const { tables, other } = contentOf(element)
    if (other)
      report(
        'unexpected-content',
        `<${name}> holds a value, or a table of them, and no other text`,
        at,
        {
          hint: `\`<${name} … />\`, with the words outside`,
        },
      )
    const plusMinus = text('plusMinus')
    const shared = {
      kind: rootKinds[name],
      ...only('instrument', text('with')),
      ...only('source', text('source')),
      ...only('at', text('at')),
      ...only('because', text('because')),
      ...only('settle', text('settle')),
      ...only('on', on),
    }
    for (const need of known.needs) {
      if (need === 'value' && tables.length > 0) continue
      const given = get(need)
      if (given === undefined || (given.value.type === 'text' && given.value.text.trim() === ''))
        report(
          `no-${need === 'with' ? 'instrument' : need === 'because' ? 'reason' : need}`,
          `<${name}> does not say ${whyNeeded[need] ?? need}`,
          at,
        )
    }
    if (
      name === 'Rated' &&
      get('source') !== undefined &&
      get('at') === undefined &&
      tables.length === 0
    )
      report('no-page', '<Rated> does not say where in the source it stands', at, {
        level: 'warning',
        hint: '`at="p. 7"`, or the table or clause',
      })
    const [table] = tables
    if (table !== undefined) {
      readRootTable(readTable(table), name, shared, at)
      return
    }
    const id = declare(get('id'), name, at)
    const value = text('value')
    if (value === undefined || value === '') return
    roots.push({
      name: id,
      value,
      ...shared,
      ...only('plusMinus', plusMinus),
      ...only('replaces', sum('replaces')),
      ...only('checks', sum('checks')),
      line: at.line,
      column: at.column,
      valueAt: pick(get('value') ?? at),
    })
    uses.push({ type: 'root', name: id, linked, ...at })
  }

  function readRootTable(
    table: RawTable,
    element: string,
    shared: Omit<RootSource, 'name' | 'value' | 'line' | 'column' | 'valueAt'>,
    at: At & { offset: number },
  ): void {
    const known = ['name', 'value', 'plusMinus', 'at', 'what']
    const columns = table.headings.map((heading) => (heading === '±' ? 'plusMinus' : heading))
    const wrong = columns.filter((column) => !known.includes(column))
    if (wrong.length > 0 || !columns.includes('name') || !columns.includes('value')) {
      report(
        'bad-table',
        `the table in <${element}> has the columns ${columns.map((column) => `\`${column}\``).join(', ')}`,
        table,
        {
          allowed: '`name` and `value`, and where wanted `±`, `at`, `what`',
        },
      )
      return
    }
    const names: string[] = []
    for (const row of table.rows) {
      const cell = (key: string): Extract<RawInput, { type: 'text' }> | undefined => {
        const found = row[key] ?? (key === 'plusMinus' ? row['±'] : undefined)
        return found?.type === 'text' ? found : undefined
      }
      const nameCell = cell('name')
      const valueCell = cell('value')
      const rowAt = nameCell ?? valueCell ?? table
      if (nameCell === undefined || valueCell === undefined) {
        report('bad-table', 'a row of the table lacks its name or its value', rowAt)
        continue
      }
      const id = declare(
        { name: 'id', value: { type: 'text', text: nameCell.text }, ...pick(nameCell) },
        element,
        pick(nameCell),
      )
      names.push(id)
      roots.push({
        name: id,
        value: valueCell.text,
        ...shared,
        ...only('plusMinus', cell('plusMinus')?.text),
        ...only('at', cell('at')?.text ?? shared.at),
        ...pick(nameCell),
        valueAt: pick(valueCell),
      })
    }
    uses.push({ type: 'table', names, ...at })
  }

  const readCalc = (element: Element): void => {
    const at = start(element)
    const attributes = attributesOf(element)
    const find = (key: string): Attribute | undefined =>
      attributes.find((attribute) => attribute.name === key)
    const text = (key: string): string | undefined => {
      const attribute = find(key)
      if (attribute === undefined) return undefined
      if (attribute.value.type === 'text') return attribute.value.text.trim()
      report('not-text', `\`${key}\` is a text in quotes`, attribute)
      return undefined
    }
    if (find('id') === undefined)
      report('no-id', '<Calc> has no `id`: its results need a name', at, {
        hint: '`id="pumpFuse"`',
      })
    const name = declare(find('id'), 'Calc', at)
    const use = text('use')
    if (use === undefined && find('use') === undefined)
      report('no-calculator', '<Calc> does not say which calculator: `use="…"`', at)
    const accept = text('accept')
    if (accept === '') report('no-reason', '`accept` needs the reason', find('accept') ?? at)
    const given: Record<string, RawInput> = {}
    for (const attribute of attributes) {
      if (['id', 'use', 'title', 'accept'].includes(attribute.name)) continue
      given[attribute.name] = rawInput(attribute)
    }
    const { tables, other } = contentOf(element)
    if (other)
      report('unexpected-content', '<Calc> holds a table of parts and no other text', at, {
        hint: 'leave a blank line before and after the table, and put the words outside',
      })
    if (use === undefined) return
    blocks.push({
      name,
      use,
      useAt: pick(find('use') ?? at),
      ...only('title', text('title')),
      ...only('accept', accept === '' ? undefined : accept),
      given,
      tables: tables.map(readTable),
      line: at.line,
      column: at.column,
    })
    uses.push({ type: 'block', name, ...at })
  }

  const readShow = (element: Element, linked: boolean): void => {
    const at = start(element)
    const attributes = attributesOf(element)
    let name: string | undefined
    let unit: string | undefined
    let digits: number | undefined
    let value: Attribute | undefined
    for (const attribute of attributes) {
      if (attribute.name === 'value') value = attribute
      else if (attribute.name === 'id') name = declare(attribute, 'Show', at)
      else if (attribute.name === 'unit' && attribute.value.type === 'text')
        unit = attribute.value.text.trim()
      else if (attribute.name === 'digits') {
        const read =
          attribute.value.type === 'text'
            ? Number(attribute.value.text)
            : attribute.value.type === 'braces' && attribute.value.node.type === 'Literal'
              ? Number(attribute.value.node.value)
              : Number.NaN
        if (Number.isInteger(read) && read >= 1 && read <= 12) digits = read
        else report('bad-digits', '`digits` is a whole number from 1 to 12', attribute)
      } else
        report('unknown-attribute', `<Show> has no \`${attribute.name}\``, attribute, {
          allowed: 'value, unit, digits, id',
        })
    }
    if (value?.value.type !== 'braces') {
      report('not-a-name', '<Show> takes a name in braces: `value={pump.flow}`', value ?? at)
      return
    }
    if (sortNames(value.value.node, 'value') !== 'ledger') return
    const sum = sumFrom(value.value.node)
    if (sum === undefined) return
    if (name !== undefined) sums.push({ name, sum, line: at.line, column: at.column })
    uses.push({
      type: 'show',
      ...only('name', name),
      sum,
      text: value.value.source,
      ...only('unit', unit),
      ...only('digits', digits),
      linked,
      ...at,
    })
  }

  const readQuoted = (element: Element): void => {
    const at = start(element)
    const source = attributesOf(element).find(({ name }) => name === 'source')
    if (source?.value.type !== 'text' || source.value.text.trim() === '')
      report('no-source', '<Quoted> does not say who is quoted: `source="…"`', at)
    else
      uses.push({
        type: 'quoted',
        text: toString(element),
        source: source.value.text.trim(),
        ...at,
      })
  }

  // Names may be used above the element that gives them: collect them before walking.
  const declaredLater = new Set<string>()
  visitParents(tree, (node) => {
    if (node.type !== 'mdxJsxFlowElement' && node.type !== 'mdxJsxTextElement') return
    for (const attribute of node.attributes)
      if (
        attribute.type === 'mdxJsxAttribute' &&
        attribute.name === 'id' &&
        typeof attribute.value === 'string'
      )
        if (kitElements.includes(node.name ?? ''))
          declaredLater.add(attribute.value.normalize('NFKC').trim())
    if (
      node.name === 'Reading' ||
      node.name === 'Rated' ||
      node.name === 'Assumed' ||
      node.name === 'Chosen'
    )
      for (const child of node.children)
        if (child.type === 'table')
          for (const row of child.children.slice(1)) {
            const column =
              child.children[0]?.children.findIndex((cell) => toString(cell).trim() === 'name') ??
              -1
            const cell = row.children[column]
            if (cell !== undefined) declaredLater.add(toString(cell).normalize('NFKC').trim())
          }
  })
  const isLedgers = (name: string): boolean =>
    declaredLater.has(name.normalize('NFKC')) || imports.some(({ local }) => local === name)

  for (const node of tree.children) {
    if (node.type !== 'mdxjsEsm' || !node.data?.estree) continue
    for (const statement of node.data.estree.body.map(anyNode)) {
      if (statement.type === 'ImportDeclaration') continue
      for (const use of freeNames(statement)) {
        if (isLedgers(use.name))
          report(
            'number-in-export',
            `\`${use.name}\` is a number of the ledger: an export cannot use it`,
            use,
          )
        else if (!bound.has(use.name)) sortNames(statement, 'export')
      }
    }
  }
  for (const { local, line, column } of imports)
    if (declaredLater.has(local))
      report(
        'doubled-name',
        `\`${local}\` is imported and also given to a number here`,
        { line, column },
        {
          hint: `import it under another name: \`{ ${local} as other }\``,
        },
      )

  const checkPicture = (url: string, at: At): void => {
    const fault = pictureFault(url, file, options.files)
    if (fault !== undefined) report(fault.rule, fault.text, at, fault)
  }
  const picturesByReference = new Set<string>()
  visitParents(tree, 'imageReference', ({ identifier }) => {
    picturesByReference.add(identifier)
  })

  visitParents(tree, (node, ancestors) => {
    const inLink = ancestors.some(({ type }) => type === 'link' || type === 'heading')
    switch (node.type) {
      case 'heading':
        readHeading(node)
        return undefined
      case 'link':
      case 'image':
      case 'definition': {
        // The parser takes braces out of an alternative text and leaves what stood in them.
        const source = raw
          .replace(/^\uFEFF/, '')
          .slice(node.position?.start.offset, node.position?.end.offset)
        const alt =
          node.type === 'image'
            ? /^!\[((?:\\.|[^\]\\])*)/.exec(source)?.[1]?.replace(/\\./g, '')
            : ''
        if (
          node.type === 'image' ||
          (node.type === 'definition' && picturesByReference.has(node.identifier))
        )
          checkPicture(node.url, start(node))
        const [target = ''] = node.url.split('#')
        if (
          node.type !== 'image' &&
          target.endsWith('.mdx') &&
          !/^[a-z]+:/i.test(target) &&
          options.slugOf(target) === undefined
        ) {
          const near = nearestName(target.replace(/^\.\//, ''), options.knownNotes)
          report('unknown-note', `a link to \`${target}\`: there is no such note`, start(node), {
            ...(near === undefined ? {} : { hint: `did you mean \`./${near}\`?` }),
          })
        }
        for (const [what, text] of [
          ['alternative text', alt],
          ['title', node.title],
          ['address', safeDecode(node.url)],
        ])
          if (text !== null && text !== undefined && /\{[^}]*\}/.test(text))
            report(
              'braces-in-link',
              `braces in the ${what ?? ''} of a link or picture: nothing is worked out there`,
              start(node),
            )
        return undefined
      }
      case 'mdxTextExpression':
      case 'mdxFlowExpression': {
        const program = node.data?.estree
        const expression = program ? onlyExpression(anyNode(program)) : undefined
        if (expression === undefined) return undefined
        if (sortNames(expression, 'expression') !== 'ledger') return undefined
        const sum = sumFrom(expression)
        if (sum !== undefined)
          uses.push({ type: 'sum', sum, text: node.value.trim(), linked: !inLink, ...start(node) })
        return undefined
      }
      case 'mdxJsxFlowElement':
      case 'mdxJsxTextElement':
        return readElement(node, !inLink)
      default:
        return undefined
    }
  })

  function readHeading(node: Heading): void {
    // Until its numbers are known, a heading's id is made of its source text.
    const id = slugger.slug(headingText(node))
    headings.set(id, start(node))
  }

  function readElement(node: Element, linked: boolean): 'skip' | undefined {
    const name = node.name ?? ''
    if (name === 'Reading' || name === 'Rated' || name === 'Assumed' || name === 'Chosen') {
      readRoot(node, name, linked)
      return 'skip'
    }
    if (name === 'Calc') {
      readCalc(node)
      return 'skip'
    }
    if (name === 'Show') {
      readShow(node, linked)
      return 'skip'
    }
    if (name === 'Nominal') {
      if (node.attributes.length > 0)
        report(
          'nominal-with-name',
          'nothing can rest on a <Nominal>: it takes no attributes',
          start(node),
        )
      uses.push({ type: 'nominal', text: toString(node), ...start(node) })
      return 'skip'
    }
    if (name === 'Quoted') {
      readQuoted(node)
      return 'skip'
    }
    if (name === 'img') {
      const source = node.attributes.find(
        (attribute) => attribute.type === 'mdxJsxAttribute' && attribute.name === 'src',
      )
      if (typeof source?.value === 'string')
        report(
          'picture-as-tag',
          `<img> with \`${source.value}\`: nobody puts it on the site`,
          start(node),
          {
            hint: 'write `![what it shows](./pump.jpg)`',
          },
        )
    }
    const [head] = name.split('.')
    if (head !== undefined && /^\p{Lu}/u.test(head) && !bound.has(head)) {
      const near = nearestName(head, [
        ...kitElements,
        ...[...bound].filter((other) => /^\p{Lu}/u.test(other)),
      ])
      report('unknown-element', `there is no element <${name}>`, start(node), {
        hint:
          near === undefined
            ? `import it, or write \`\\<${name}\` if you mean the sign`
            : `did you mean <${near}>?`,
      })
    }
    for (const attribute of node.attributes) {
      const value = attribute.type === 'mdxJsxAttribute' ? attribute.value : attribute
      if (typeof value !== 'object' || !value?.data?.estree) continue
      const program = anyNode(value.data.estree)
      const sorted = sortNames(program, 'attribute')
      if (sorted === 'ledger')
        report(
          'number-in-attribute',
          `<${name}> is not one of the kit’s elements: a number of the ledger cannot stand in its attributes`,
          start(attribute),
          { hint: 'put the number between the tags' },
        )
    }
    return undefined
  }

  for (const [name, at] of declared) {
    const heading = headings.get(name)
    if (heading !== undefined)
      report(
        'clash-with-heading',
        `the name \`${name}\` is also the address of a heading in this note`,
        at,
        {
          also: [{ file, line: heading.line, column: heading.column }],
          hint: 'choose another name, or word the heading differently',
        },
      )
  }

  return {
    slug,
    file,
    path,
    raw,
    meta,
    imports,
    roots,
    sums,
    blocks,
    uses,
    bound,
    headings,
    problems,
  }
}

/** The text a heading is addressed by: its words, and the source of what is in braces. */
export function headingText(heading: Heading): string {
  let text = ''
  visitParents(heading, (node) => {
    if (node.type === 'text' || node.type === 'inlineCode' || node.type === 'mdxTextExpression')
      text += node.value
    else if (node.type === 'mdxJsxTextElement') {
      const id = node.attributes.find(
        (attribute) => attribute.type === 'mdxJsxAttribute' && attribute.name === 'id',
      )
      if (id !== undefined && typeof id.value === 'string') text += id.value
    }
  })
  return text
}

function only<K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> {
  const made: Partial<Record<K, V>> = {}
  if (value !== undefined) made[key] = value
  return made
}

const pick = ({ line, column }: At): At => ({ line, column })

function safeDecode(url: string): string {
  try {
    return decodeURI(url)
  } catch {
    return url
  }
}
